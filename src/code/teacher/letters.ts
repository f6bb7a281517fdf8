import { yearsTouched } from './facts';
import type { FramedFact } from './frame';

export interface InferredCycle {
  letters: string;
  /** Year of the first letter. */
  first: number;
  /** Bits of the choices of skipped letters that the codes do not tell. */
  cost: number;
  skipped: string;
}

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
/** Letters in the order in which makers leave them out, those most easily mistaken first: common practice, no source. */
const likelySkipped = 'IOQUJZVXYWSGBD';

const choose = (of: number, some: number): number => (some === 0 ? 1 : (choose(of - 1, some - 1) * of) / some);

/**
 * A cycle whose letters rise with the years, with as many letters skipped between two known ones as the years ask.
 * Which of them were skipped is a guess where the codes leave a choice. Only the letters from the first to the last
 * known one are listed: the codes say nothing of the others. Null when letters do not rise with the years.
 */
export function inferCycle(facts: readonly FramedFact[], place: number): InferredCycle | null {
  const yearOf = new Map<string, number>();
  for (const fact of facts) {
    const letter = fact.core[place]!;
    const years = yearsTouched(fact);
    if (years.length !== 1 || !alphabet.includes(letter)) return null;
    if ((yearOf.get(letter) ?? years[0]) !== years[0]) return null;
    yearOf.set(letter, years[0]!);
  }
  const known = [...yearOf].sort(([a], [b]) => (a < b ? -1 : 1));
  if (known.length < 3) return null;
  let letters = known[0]![0];
  let skipped = '';
  let cost = 0;
  for (const [at, [letter, year]] of known.slice(1).entries()) {
    const [before, earlier] = known[at]!;
    const between = alphabet.slice(alphabet.indexOf(before) + 1, alphabet.indexOf(letter));
    const missing = between.length - (year - earlier - 1);
    if (year <= earlier || missing < 0) return null;
    const leftOut = [...between]
      .sort((a, b) => rankOf(a) - rankOf(b))
      .slice(0, missing)
      .join('');
    cost += Math.log2(choose(between.length, missing)) + missing;
    skipped += [...leftOut].sort().join('');
    letters += [...between].filter((one) => !leftOut.includes(one)).join('') + letter;
  }
  return { letters, first: known[0]![1], cost, skipped };
}

const rankOf = (letter: string): number => {
  const at = likelySkipped.indexOf(letter);
  return at < 0 ? likelySkipped.length : at;
};
