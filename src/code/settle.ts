import { bare } from '../stamp';
import type { Misfit, Nearest, Reading } from './types';

/**
 * A text counts as read when its probability reaches this level. Reason: below it, more than one reading in ten of
 * a calibrated recogniser would be wrong, and a wrong code accuses; asking the user to look again costs seconds.
 */
export const acceptanceLevel = 0.9;

/** Readings and misfits under these probabilities are left out. */
const worthReading = 0.01;
const leastReading = 0.001;
const worthDoubting = 0.05;

export interface Weighed {
  reading: Reading;
  inPeriod: boolean;
  weight: number;
  /** Probability of its text in the lattice, for each character: the geometric mean. */
  legibility: number;
}
export interface WeighedMisfit {
  misfit: Misfit;
  weight: number;
}

export interface Settled {
  readings: Reading[];
  misfits: Misfit[];
  nearest: Nearest[];
}

const keyOf = ({ text, system }: { text: string; system: Reading['system'] }) => `${system.maker ?? ''}\n${bare(text)}`;
const sumOf = (items: { weight: number }[]) => items.reduce((sum, { weight }) => sum + weight, 0);

/**
 * Turns weights into probabilities (they sum to at most 1, the rest being "none of these") and keeps what is worth
 * saying. When no text reaches the acceptance level with characters that are legible there are no readings: candidates
 * go to `nearest`.
 */
export function settle(
  weighed: Weighed[],
  misfits: WeighedMisfit[],
  { nothing, written, legible }: { nothing: number; written: string; legible: number },
): Settled {
  // Under two systems of one maker a date outside the one's period is no rival to a date inside the other's.
  const sound = new Set(weighed.flatMap(({ reading, inPeriod }) => (inPeriod ? [keyOf(reading)] : [])));
  const rivals = mergeReadings(
    weighed.filter(({ reading, inPeriod }) => inPeriod || !sound.has(keyOf(reading))),
    written,
  );
  const known = new Set(weighed.map(({ reading }) => keyOf(reading)));
  const wrong = mergeMisfits(misfits.filter(({ misfit }) => !known.has(keyOf(misfit))));
  const total = sumOf(rivals) + sumOf(wrong) + nothing;
  if (total === 0) return { readings: [], misfits: [], nearest: [] };
  const all = rivals
    .map(({ reading, weight }) => ({ ...reading, probability: weight / total }))
    .sort((a, b) => b.probability - a.probability);
  const texts = new Map<string, number>();
  for (const { text, probability } of all) texts.set(bare(text), (texts.get(bare(text)) ?? 0) + probability);
  // With many maker files on hand each of many readings of one text may be unlikely: the likeliest are kept.
  const readings = all.filter(({ probability }, place) => probability >= worthReading || place < 3);
  const isLegible = rivals.some(
    ({ reading, legibility }) => legibility >= legible && texts.get(bare(reading.text))! >= acceptanceLevel,
  );
  if (isLegible) {
    return { readings: readings.filter(({ probability }) => probability >= leastReading), misfits: [], nearest: [] };
  }
  const told = wrong
    .map(({ misfit, weight }) => ({ ...misfit, probability: weight / total }))
    .filter(({ probability }) => probability >= worthDoubting)
    .sort((a, b) => b.probability - a.probability);
  const nearest = readings
    .filter(({ probability }) => probability >= worthReading)
    .map((reading) => ({
      text: reading.text,
      system: reading.system,
      how: written === reading.text ? ('as-written' as const) : ('likely' as const),
      likelihood: reading.probability,
      reading,
    }));
  return { readings: [], misfits: told, nearest };
}

/** Two layouts of a system, or two ways through one, may say the same: that is one reading, as it was written. */
function mergeReadings(weighed: Weighed[], written: string): Weighed[] {
  const merged = new Map<string, Weighed>();
  for (const item of [...weighed].sort((a, b) => b.weight - a.weight)) {
    const { system, text, span, places } = item.reading;
    const key = JSON.stringify([system, bare(text), span, places]);
    const known = merged.get(key);
    if (!known) merged.set(key, { ...item });
    else {
      known.weight += item.weight;
      known.legibility = Math.max(known.legibility, item.legibility);
      if (text === written) known.reading = item.reading;
    }
  }
  return [...merged.values()];
}

function mergeMisfits(misfits: WeighedMisfit[]): WeighedMisfit[] {
  const merged = new Map<string, WeighedMisfit>();
  for (const item of [...misfits].sort((a, b) => b.weight - a.weight)) {
    const { system, text, slot } = item.misfit;
    const key = JSON.stringify([system, bare(text), slot]);
    const known = merged.get(key);
    if (known) known.weight += item.weight;
    else merged.set(key, { ...item });
  }
  return [...merged.values()];
}

/** One line for each code and what it says, the likeliest first. */
export function dedupeNearest(nearest: readonly Nearest[]): Nearest[] {
  const seen = new Set<string>();
  return nearest.filter(({ text, system, reading }) => {
    const key = JSON.stringify([bare(text), system, reading.span, reading.places]);
    return seen.has(key) ? false : seen.add(key);
  });
}
