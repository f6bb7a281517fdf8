import { bare } from './bare';

/** Longest code of letters and digits, and longest running number. Common practice, no source. */
const longestMixed = 14;
/**
 * A vehicle's number: 17 letters and digits without I, O and Q, the last four digits. Source: ISO 3779. It is read as surely
 * as a code, and is longer than one.
 */
const vehicleNumber = /^[A-HJ-NPR-Z0-9]{13}[0-9]{4}$/;
export const longestNumber = 20;
/** Share of digits from which on a long text is a number, with a letter or two at an end. */
const shareOfNumber = 0.8;

/** Whether a text is short enough for a code: numbers run longer than codes that have letters. */
export function hasLengthOfCode(code: string): boolean {
  const digits = code.replace(/[^0-9]/g, '').length;
  return code.length <= (digits >= shareOfNumber * code.length ? longestNumber : longestMixed);
}

/**
 * Whether a text that no code system explains has the look of a code and not of words: short, and at least two digits
 * that make up two fifths of it ("CALDERWICK & ROOK" read with an 8 for the & has not). Common practice, no source.
 */
export function looksLikeCode(text: string): boolean {
  const code = bare(text);
  const digits = code.replace(/[^0-9]/g, '').length;
  const isOfLength = hasLengthOfCode(code) || vehicleNumber.test(code);
  return code.length >= 3 && isOfLength && digits >= 2 && digits / code.length >= 0.4;
}
