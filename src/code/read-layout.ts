import type { BookSystem } from './book';
import { type Impossible, interpret } from './interpret';
import { type LaidLayout, longestCode } from './layout';
import { shapeMass } from './mass';
import { expectedShare, wideShare } from './prior';
import { readingOf, shortName } from './reading';
import { leftOut, type Step, searchLayout } from './search';
import type { Weighed, WeighedMisfit } from './settle';

/** Fillings kept while searching. Exact for typed text; for stamps wide enough for two doubtful characters in each group. */
const beamWidth = 64;
/** Texts so much less likely than the best are not looked at for impossible values. */
const doubtfulShare = 0.02;

/** One layout of one system, and its share among all that are tried. */
export interface Tried {
  system: BookSystem;
  laid: LaidLayout;
  known: number;
  /** The user named this maker, so a date outside the system's period is worth telling. */
  named: boolean;
  latestYear: number | undefined;
}

/** Whether a lattice of these steps can be as short and as long as the layout. */
export function lengthFits(steps: readonly Step[], laid: LaidLayout): boolean {
  let fewest = 0;
  let most = 0;
  let afterBlank = true;
  for (const { blank, characters } of steps) {
    if (characters.length > 0) most++;
    if (blank === 0 && afterBlank) fewest++;
    afterBlank = characters.length === 0;
  }
  return laid.shortest <= most && laid.cells.length >= fewest;
}

/** Every reading of a lattice under a layout with its weight, and the probability of all the texts that were read. */
export function readLayout(steps: readonly Step[], { system, laid, known, named, latestYear }: Tried) {
  const weighed: Weighed[] = [];
  let mass = 0;
  for (const { path, probability } of searchLayout(steps, laid, { width: beamWidth, keep: 'valid' })) {
    const meanings = interpret(system, laid, path, latestYear);
    if (!Array.isArray(meanings)) continue;
    mass += probability;
    const legibility = probability ** (1 / path.length);
    for (const meaning of meanings) {
      // Without a maker's name a date outside a system's period says no more than that another system fits better.
      if (!named && !meaning.inPeriod) continue;
      const share = expectedShare(system, laid, path, meaning, latestYear) / meanings.length;
      const reading = readingOf(system, laid, path, meaning);
      weighed.push({ reading, inPeriod: meaning.inPeriod, weight: known * probability * share, legibility });
    }
  }
  return { weighed, mass };
}

/** Texts of a layout's shape with an impossible value, among the likeliest texts of a lattice. */
export function misfitLayout(
  free: readonly { text: string; probability: number }[],
  { system, laid, known, latestYear }: Tried,
): (WeighedMisfit & { mass: number })[] {
  const likely = free.filter(({ probability }) => probability >= doubtfulShare * (free[0]?.probability ?? 0));
  return likely.flatMap(({ text, probability }) => {
    const plain = system.reversed ? [...text].reverse().join('') : text;
    const wrong = impossibleIn(plain, system, laid, latestYear);
    if (!wrong) return [];
    const { slot, value, expected, share } = wrong;
    const misfit = { text, probability: 0, system: shortName(system), slot, value, expected };
    return [{ misfit, weight: known * probability * share, mass: probability }];
  });
}

/** Weight of all the texts of a layout's shape that were neither read nor told as misfits, too many to list. */
export function unnamedMisfits(steps: readonly Step[], laid: LaidLayout, told: number): number {
  const rest = Math.max(0, shapeMass(steps, laid) - told);
  return rest * wideShare(laid.cells.filter(({ optional }) => !optional));
}

/** The first impossible value of a text that has the layout's shape; null when it has not, or nothing is impossible. */
function impossibleIn(
  text: string,
  system: BookSystem,
  laid: LaidLayout,
  latestYear?: number,
): (Impossible & { share: number }) | null {
  if (text.length > longestCode || text.length < laid.shortest) return null;
  const steps = [...text].flatMap((character) => [
    { blank: 1, characters: [] },
    { blank: /[A-Z0-9]/.test(character) ? 0 : 0.5, characters: [[character, 0.5] as [string, number]] },
  ]);
  let first: (Impossible & { share: number }) | null = null;
  for (const { path } of searchLayout(steps, laid, { width: 16, keep: 'shape' })) {
    const meaning = interpret(system, laid, path, latestYear);
    if (Array.isArray(meaning)) return null;
    first ??= {
      ...meaning,
      share: wideShare(laid.cells.filter((_, cell) => path[cell] !== leftOut)),
    };
  }
  return first;
}
