/**
 * Counts the work of a reader in characters and elements looked at, with the engine's own methods replaced while it
 * runs. The same text always counts the same, however busy the machine is. What one pattern does inside itself is not
 * seen from here; shapes of patterns are held by a test of their own. A slice counts its length, as if it were copied.
 */
export function countWork(run: () => unknown): number {
  let work = 0;
  const undo: (() => void)[] = [];
  /** Replaces a method by one that adds what a call costs; `cost` is asked before the call, and after it with its result. */
  const watch = <T extends object>(
    prototype: T,
    names: readonly (keyof T & string)[],
    cost: (self: never, values: never, result: never) => number,
  ) => {
    for (const name of names) {
      const own = Object.getOwnPropertyDescriptor(prototype, name) as PropertyDescriptor;
      const method = own.value as (...values: unknown[]) => unknown;
      Object.defineProperty(prototype, name, {
        ...own,
        value: function (this: never, ...values: unknown[]) {
          const result = method.apply(this, values);
          work += cost(this, values as never, result as never);
          return result;
        },
      });
      undo.push(() => Object.defineProperty(prototype, name, own));
    }
  };
  const length = (self: { length: number }) => self.length + 1;
  const resultLength = (_self: unknown, _values: unknown, result: { length: number }) => result.length + 1;
  watch(
    Array.prototype,
    ['map', 'filter', 'flatMap', 'forEach', 'reduce', 'sort', 'join', 'reverse', 'splice', 'shift', 'unshift'],
    length,
  );
  // These stop at what they look for.
  watch(Array.prototype, ['includes', 'indexOf'], (self: unknown[], [wanted]: [unknown], result: number | boolean) =>
    stopsAt(self, wanted, result),
  );
  watch(Array.prototype, ['slice', 'concat', 'flat'], resultLength);
  watch(typedArray, ['slice'], resultLength);
  watch(
    String.prototype,
    ['toLowerCase', 'toUpperCase', 'normalize', 'trim', 'trimStart', 'trimEnd', 'split', 'replaceAll', 'repeat'],
    length,
  );
  watch(String.prototype, ['slice', 'substring'], resultLength);
  watch(String.prototype, ['indexOf'], (self: string, [, from = 0]: [string, number?], result: number) =>
    result < 0 ? self.length - from + 1 : result - from + 1,
  );
  watch(String.prototype, ['includes'], (self: string, [wanted]: [string]) => {
    const at = indexIn(self, wanted);
    return at < 0 ? self.length + 1 : at + 1;
  });
  watchCallbacks(undo, (cost) => {
    work += cost;
  });
  watchPatterns(undo, (cost) => {
    work += cost;
  });
  try {
    run();
  } finally {
    for (const step of undo.reverse()) step();
  }
  return work;
}

const typedArray = Object.getPrototypeOf(Uint8Array.prototype) as Uint8Array;
const indexIn = (
  (method) => (text: string, wanted: string) =>
    method.call(text, wanted)
)(String.prototype.indexOf);
const placeIn = (
  (method) => (list: unknown[], wanted: unknown) =>
    method.call(list, wanted)
)(Array.prototype.indexOf);

function stopsAt(list: unknown[], wanted: unknown, result: number | boolean): number {
  const at = typeof result === 'number' ? result : result ? placeIn(list, wanted) : -1;
  return at < 0 ? list.length + 1 : at + 1;
}

/** Methods that ask a function until it answers: each question counts one. */
function watchCallbacks(undo: (() => void)[], add: (cost: number) => void): void {
  for (const name of ['some', 'every', 'find', 'findIndex', 'findLast', 'findLastIndex'] as const) {
    const own = Object.getOwnPropertyDescriptor(Array.prototype, name) as PropertyDescriptor;
    const method = own.value as (...values: unknown[]) => unknown;
    Object.defineProperty(Array.prototype, name, {
      ...own,
      value: function (this: unknown[], asked: (...values: unknown[]) => unknown, self?: unknown) {
        const counting = (...values: unknown[]) => {
          add(1);
          return asked(...values);
        };
        return method.call(this, counting, self);
      },
    });
    undo.push(() => Object.defineProperty(Array.prototype, name, own));
  }
}

const caret = 94;

/** A pattern walks from where it begins to the end of its match, or to the end of the text; a bound one stays where it is. */
function watchPatterns(undo: (() => void)[], add: (cost: number) => void): void {
  const own = Object.getOwnPropertyDescriptor(RegExp.prototype, 'exec') as PropertyDescriptor;
  const exec = own.value as (this: RegExp, text: string) => RegExpExecArray | null;
  Object.defineProperty(RegExp.prototype, 'exec', {
    ...own,
    value: function (this: RegExp, text: string) {
      const from = this.global || this.sticky ? this.lastIndex : 0;
      const match = exec.call(this, text);
      const bound = this.sticky || (this.source.charCodeAt(0) === caret && !this.multiline);
      add(match ? match.index + match[0].length - from + 1 : bound ? 1 : Math.max(0, text.length - from) + 1);
      return match;
    },
  });
  undo.push(() => Object.defineProperty(RegExp.prototype, 'exec', own));
}
