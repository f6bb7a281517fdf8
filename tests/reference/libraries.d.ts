/** The few functions that tests take from libraries without types of their own. */
declare module 'validator' {
  const validator: {
    isISO6346(text: string): boolean;
    isIMEI(text: string): boolean;
    isISBN(text: string, version?: 10 | 13): boolean;
    isEAN(text: string): boolean;
  };
  export default validator;
}
declare module 'container-validator' {
  export default class ContainerValidator {
    isValid(code: string): boolean;
  }
}
declare module 'vin-validator' {
  const vinValidator: { validate(vin: string): boolean };
  export default vinValidator;
}
declare module 'luxon' {
  export class DateTime {
    static fromISO(text: string, options?: { zone: string }): DateTime;
    readonly isValid: boolean;
    toISODate(): string;
  }
}
declare module 'culori' {
  interface Lab65 {
    mode: 'lab65';
    l: number;
    a: number;
    b: number;
  }
  export function converter(mode: 'lab65'): (colour: { mode: 'rgb'; r: number; g: number; b: number }) => Lab65;
  export function differenceCiede2000(): (one: Lab65, other: Lab65) => number;
}
declare module 'jsdom' {
  export class JSDOM {
    constructor(html: string);
    readonly window: Window & typeof globalThis;
  }
}
