import type { OwnFields } from '../propose';

const signs = /(?<![\p{L}\d])(?:(?<letter>[A-Z])|(?<year>(?:18|19|20)\d\d))(?![\p{L}\d]|\.(?!\s{0,3}$))/gu;
/** One letter beside a year is chance; so many in one sentence are a table told in words. */
const fewest = 3;
const farthest = 40;

interface Sign {
  letter?: string;
  year?: string;
  at: number;
}

/** "The letter A stands for 1990, B for 1991, C for 1992", and "1990 A, 1991 B, 1992 C": what the sentence ends with comes second. */
export function lettersIn(sentence: string): Extract<OwnFields, { kind: 'year-letter' }>[] {
  const found = [...sentence.matchAll(signs)].map(({ groups, index }): Sign => ({ ...groups, at: index }));
  const yearLast = found.at(-1)?.year !== undefined;
  const pairs = found.slice(1).flatMap((second, index) => {
    const first = found[index]!;
    const [letter, year] = yearLast ? [first.letter, second.year] : [second.letter, first.year];
    const near = second.at - first.at <= farthest && !/[.;]\s/.test(sentence.slice(first.at, second.at));
    return letter !== undefined && year !== undefined && near
      ? [{ kind: 'year-letter' as const, letter, year: Number(year) }]
      : [];
  });
  return pairs.length >= fewest ? pairs : [];
}
