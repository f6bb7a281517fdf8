import type { OwnFields } from '../propose';

const pairs = /(?<![\p{L}\d])([A-Z])(?![\p{L}\d.])[^\d.;A-Z]{1,40}((?:18|19|20)\d\d)(?!\d)/gu;
/** One letter beside a year is chance; so many in one sentence are a table told in words. */
const fewest = 3;

/** "The letter A stands for 1990, B for 1991, C for 1992". */
export function lettersIn(sentence: string): Extract<OwnFields, { kind: 'year-letter' }>[] {
  const found = [...sentence.matchAll(pairs)].map(([, letter, year]) => ({
    kind: 'year-letter' as const,
    letter: letter!,
    year: Number(year),
  }));
  return found.length >= fewest ? found : [];
}
