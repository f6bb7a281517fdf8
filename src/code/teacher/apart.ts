import type { BookSystem } from '../book';
import type { Contents } from '../encode';
import { fillLayout } from '../encode';
import { interpret } from '../interpret';
import type { LaidLayout } from '../layout';
import { readsOf } from '../reads';
import { textOf } from '../search';
import { type Candidate, openCandidate, readingsOf } from './candidates';
import type { Explanation } from './explain';

/** A code to look for: what each remaining explanation would read in it. */
export interface TellingCode {
  code: string;
  /** What the remaining ones read, in their order; null when the code does not fit. */
  readings: (string | null)[];
}

/** Codes drawn from each layout to see where others read them otherwise. */
const drawnEach = 14;

/** A fixed series of numbers that looks random, so that the same question is asked every time. */
function* series(): Generator<number, never> {
  for (let state = 12_345; ; ) {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
    yield state / 2 ** 31;
  }
}

/** What an explanation reads in a code, in short form; null when nothing. Several readings are joined. */
export function readBriefly({ eras }: Pick<Explanation, 'eras'>, code: string): string | null {
  const readings = eras.flatMap((era) => readingsOf(stretched(era), code).map(readsOf));
  return readings.length === 0 ? null : [...new Set(readings)].sort().join(' or ');
}

const stretchedOf = new WeakMap<Candidate, Candidate>();

/**
 * A candidate some years beyond what is known: that is where layouts differ. Weeks are told by their number however
 * they are counted, because a day or two tells no layout from another.
 */
function stretched(candidate: Candidate): Candidate {
  const known = stretchedOf.get(candidate);
  if (known) return known;
  const [first, last] = candidate.used;
  const moved = (year: string, by: number) => String(Number(year.slice(0, 4)) + by).padStart(4, '0');
  const wide: Candidate = {
    ...candidate,
    layout: candidate.layout.map((slot) => ('week' in slot ? { ...slot, count: 'iso' as const } : slot)),
    used: [moved(first, -3), moved(last ?? first, 3)],
    plants: candidate.plants.map((plant) => ({ ...plant, used: ['0001', null] as [string, null] })),
  };
  stretchedOf.set(candidate, wide);
  return wide;
}

/** Codes of all explanations, with what each of them reads there. */
export interface Compared {
  codes: string[];
  /** By explanation, then by code. */
  readings: (string | null)[][];
}

/** Draws codes of each explanation and lets all of them read each. */
export function compare(explanations: readonly Explanation[]): Compared {
  const chance = series();
  const drawn = explanations.flatMap(({ eras }) =>
    eras.flatMap((era) => {
      const system = openCandidate(stretched(era));
      return Array.from({ length: drawnEach }, () => randomCode(system, chance) ?? []).flat();
    }),
  );
  const codes = [...new Set(drawn)];
  return { codes, readings: explanations.map((one) => codes.map((code) => readBriefly(one, code))) };
}

/** The code that splits these explanations into the most groups; null when none was found that splits them. */
export function tellApart({ codes, readings }: Compared, of: readonly number[]): TellingCode | null {
  let best: (TellingCode & { groups: number }) | null = null;
  for (const [at, code] of codes.entries()) {
    const read = of.map((one) => readings[one]![at]!);
    const groups = new Set(read).size;
    if (groups > (best?.groups ?? 1)) best = { code, readings: read, groups };
  }
  return best && { code: best.code, readings: best.readings };
}

function randomCode(system: BookSystem, chance: Generator<number, never>): string | null {
  const laid: LaidLayout | undefined = system.layouts[0];
  if (!laid) return null;
  const pick = (from: ArrayLike<string>) => from[Math.floor(chance.next().value * from.length)]!;
  const values: Contents['values'] = {};
  const first = Number((system.used.from ?? '1900').slice(0, 4));
  const last = Number((system.used.to ?? system.used.from ?? '1999').slice(0, 4));
  for (const group of laid.groups.values()) {
    if (group.values) values[group.name] = pick(group.values);
    else if (group.name === 'year') {
      const year = first + Math.floor(chance.next().value * (last - first + 1));
      values.year = String(year).slice(-group.width);
    } else values[group.name] = group.cells.map((cell) => pick(laid.cells[cell]!.tight)).join('');
  }
  const texts = laid.slots.map(({ first: from, end }) => {
    const cells = laid.cells.slice(from, end);
    return cells[0]?.optional || cells[0]?.group ? null : cells.map(({ tight }) => pick(tight)).join('');
  });
  const path = fillLayout(laid, { values, texts });
  return path !== null && Array.isArray(interpret(system, laid, path)) ? textOf(path) : null;
}
