import { capitals } from '../slot/cell';
import type { FramedFact } from './frame';

export interface InferredCycle {
  letters: string;
  /** Year of the first letter. */
  first: number;
  /** Bits of the choices of skipped letters that the codes do not tell. */
  cost: number;
  skipped: string;
  /** Letters with their years that it was told from. */
  known: [letter: string, year: number][];
}

/** Letters in the order in which makers leave them out, those most easily mistaken first: common practice, no source. */
const likelySkipped = 'IOQUJZVXYWSGBD';

/** The order of letters without those that are taken for figures or for another letter: common practice, no source. */
const usualOrder = [...'ABCDEFGHJKLMNPRSTUVWXYZ'];

const choose = (of: number, some: number): number => (some === 0 ? 1 : (choose(of - 1, some - 1) * of) / some);

/**
 * A cycle whose letters rise with the years, with as many letters skipped between two known ones as the years ask.
 * Which of them were skipped is a guess where the codes leave a choice. Only the letters from the first to the last
 * known one are listed: the codes say nothing of the others. Null when letters do not rise with the years.
 */
export function inferCycle(facts: readonly FramedFact[], place: number): InferredCycle | null {
  const known = longestRise(facts, place);
  if (known.length < 3) return null;
  let letters = known[0]![0];
  let skipped = '';
  let cost = 0;
  for (const [at, [letter, year]] of known.slice(1).entries()) {
    const [before, earlier] = known[at]!;
    const between = [...capitals].filter((one) => one > before && one < letter);
    const missing = between.length - (year - earlier - 1);
    const leftOut = between
      .toSorted((a, b) => rankOf(a) - rankOf(b))
      .slice(0, missing)
      .join('');
    cost += Math.log2(choose(between.length, missing)) + missing;
    skipped += [...leftOut].sort().join('');
    letters += between.filter((one) => !leftOut.includes(one)).join('') + letter;
  }
  // Letters beyond the known ones stand in codes whose date is too vague to place them: taken one a year, as a guess.
  const loose = facts.flatMap((fact) => (fact.years.length === 1 ? [] : [fact.core[place]!]));
  const before = usualOrder.filter((letter) => letter < letters[0]! && loose.some((one) => one <= letter));
  const after = usualOrder.filter((letter) => letter > letters.at(-1)! && loose.some((one) => one >= letter));
  const [all, first] = [[...before, letters, ...after].join(''), known[0]![1] - before.length];
  return { letters: all, first, cost, skipped, known };
}

/**
 * The longest series of letters with one year each in which both rise, with enough letters for the years between.
 * Codes that are wrong or of another era are not in it.
 */
function longestRise(facts: readonly FramedFact[], place: number): [letter: string, year: number][] {
  const votes = new Map<string, number>();
  for (const fact of facts) {
    const letter = fact.core[place]!;
    if (fact.years.length !== 1 || !capitals.includes(letter)) continue;
    const key = `${letter} ${fact.years[0]}`;
    votes.set(key, (votes.get(key) ?? 0) + 1);
  }
  // By letter, and of one letter by year.
  const known = [...votes.keys()].sort().map((key) => ({ letter: key[0]!, year: Number(key.slice(2)) }));
  const best: { count: number; series: [letter: string, year: number][] }[] = [];
  for (const [at, { letter, year }] of known.entries()) {
    const count = votes.get(`${letter} ${year}`)!;
    let longest: (typeof best)[number] = { count, series: [[letter, year]] };
    for (const [earlier, other] of known.slice(0, at).entries()) {
      const years = year - other.year;
      const steps = letter.charCodeAt(0) - other.letter.charCodeAt(0);
      const before = best[earlier]!;
      if (years > 0 && years <= steps && before.count + count > longest.count)
        longest = { count: before.count + count, series: [...before.series, [letter, year]] };
    }
    best.push(longest);
  }
  return best.toSorted((a, b) => b.count - a.count)[0]?.series ?? [];
}

const rankOf = (letter: string): number => {
  const at = likelySkipped.indexOf(letter);
  return at < 0 ? likelySkipped.length : at;
};
