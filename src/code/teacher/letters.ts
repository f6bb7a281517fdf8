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
    const between = capitals.slice(capitals.indexOf(before) + 1, capitals.indexOf(letter));
    const missing = between.length - (year - earlier - 1);
    const leftOut = [...between]
      .sort((a, b) => rankOf(a) - rankOf(b))
      .slice(0, missing)
      .join('');
    cost += Math.log2(choose(between.length, missing)) + missing;
    skipped += [...leftOut].sort().join('');
    letters += [...between].filter((one) => !leftOut.includes(one)).join('') + letter;
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
  const known = [...votes].map(([key, count]) => ({ letter: key[0]!, year: Number(key.slice(2)), count }));
  known.sort((a, b) => (a.letter === b.letter ? a.year - b.year : a.letter < b.letter ? -1 : 1));
  const best: { count: number; before: number | null }[] = [];
  for (const [at, { letter, year, count }] of known.entries()) {
    best.push({ count, before: null });
    for (let earlier = 0; earlier < at; earlier++) {
      const years = year - known[earlier]!.year;
      const steps = capitals.indexOf(letter) - capitals.indexOf(known[earlier]!.letter);
      const longer = best[earlier]!.count + count > best[at]!.count;
      if (years > 0 && years <= steps && longer) best[at] = { count: best[earlier]!.count + count, before: earlier };
    }
  }
  const last = best.reduce((top, { count }, at) => (count > (best[top]?.count ?? 0) ? at : top), 0);
  const series: [string, number][] = [];
  for (let at: number | null = known.length > 0 ? last : null; at !== null; at = best[at]!.before)
    series.push([known[at]!.letter, known[at]!.year]);
  return series.reverse();
}

const rankOf = (letter: string): number => {
  const at = likelySkipped.indexOf(letter);
  return at < 0 ? likelySkipped.length : at;
};
