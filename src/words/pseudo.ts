import type { Widen } from './widen';

const accents: Record<string, string> = {
  a: 'á',
  e: 'ë',
  i: 'ï',
  o: 'ö',
  u: 'ü',
  n: 'ñ',
  c: 'ç',
  A: 'Á',
  E: 'Ë',
  O: 'Ö',
};

/** A sentence 40 % longer and with accents, in brackets that show where it is cut; markup-free text only. */
const lengthen = (words: string): string => {
  const accented = words.replace(/[aeiouncAEO]/g, (letter) => accents[letter] ?? letter);
  const more = Math.ceil(words.length * 0.4);
  const filling = 'lorem ipsum dolor sit amet '
    .repeat(Math.ceil(more / 27))
    .slice(0, more)
    .trimEnd();
  return words.trim() === '' ? words : `[${accented} ${filling}]`;
};

const made = new WeakMap<object, unknown>();

/** Every word of a language made longer, for trying layouts: strings, and what functions of it answer. Made once. */
export function pseudo<T>(words: T): Widen<T> {
  if (typeof words !== 'object' || words === null) return lengthened(words);
  if (!made.has(words)) made.set(words, lengthened(words));
  return made.get(words) as Widen<T>;
}

function lengthened<T>(words: T): Widen<T> {
  if (typeof words === 'string') return lengthen(words) as Widen<T>;
  if (typeof words === 'function')
    return ((...parameters: unknown[]) => pseudo((words as (...all: unknown[]) => unknown)(...parameters))) as Widen<T>;
  if (Array.isArray(words)) return words.map((one) => pseudo(one)) as Widen<T>;
  if (typeof words === 'object' && words !== null)
    return Object.fromEntries(Object.entries(words).map(([name, value]) => [name, pseudo(value)])) as Widen<T>;
  return words as Widen<T>;
}
