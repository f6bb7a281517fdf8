import { type BookSystem, bookPlants, openSystem } from '../book';
import type { Contents } from '../encode';
import { fillLayout } from '../encode';
import { readExactly } from '../exact';
import { interpret } from '../interpret';
import type { LaidLayout } from '../layout';
import { readsOf } from '../reads';
import { textOf } from '../search';
import type { Candidate } from './candidates';

/** A code to look for: what each remaining layout would read in it. */
export interface TellingCode {
  code: string;
  /** What the remaining layouts read, in their order; null when the code does not fit. */
  readings: (string | null)[];
  words: string;
}

const tries = 80;

/** A fixed series of numbers that looks random, so that the same question is asked every time. */
function* series(): Generator<number, never> {
  for (let state = 12_345; ; ) {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
    yield state / 2 ** 31;
  }
}

export function openCandidate({ layout, used, plants }: Candidate): BookSystem {
  return openSystem({ id: 'learned', used, layout }, null, bookPlants(plants)).system;
}

/** What a system reads in a code, in short form; null when nothing. Several readings are joined. */
export function readBriefly(system: BookSystem, code: string): string | null {
  const readings = readExactly(system, code).exact.map(({ reading }) => readsOf(reading));
  return readings.length === 0 ? null : [...new Set(readings)].sort().join(' or ');
}

/** The code that splits the remaining layouts into the most groups; null when none was found that splits them. */
export function tellApart(candidates: readonly Candidate[]): TellingCode | null {
  const systems = candidates.map(openCandidate);
  const chance = series();
  let best: { code: string; readings: (string | null)[]; groups: number } | null = null;
  for (let round = 0; round < tries; round++) {
    const system = systems[round % systems.length]!;
    const code = randomCode(system, chance);
    if (code === null) continue;
    const readings = systems.map((one) => readBriefly(one, code));
    const groups = new Set(readings).size;
    if (groups > (best?.groups ?? 1)) best = { code, readings, groups };
  }
  if (!best) return null;
  const said = best.readings.map(
    (reading, place) => `layout ${place + 1} ${reading ? `reads ${reading}` : 'does not fit'}`,
  );
  const shown = said.slice(0, 4).join('; ');
  const words = `A code such as ${best.code} with its known date would tell them apart: ${shown}.`;
  return { code: best.code, readings: best.readings, words };
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
      // Some years beyond the known ones: that is where layouts differ.
      const year = first - 3 + Math.floor(chance.next().value * (last - first + 7));
      values.year = String(year).padStart(4, '0').slice(-group.width);
    } else values[group.name] = group.cells.map((cell) => pick(laid.cells[cell]!.tight)).join('');
  }
  const texts = laid.slots.map(({ first: from, end }) => {
    const cells = laid.cells.slice(from, end);
    return cells[0]?.optional || cells[0]?.group ? null : cells.map(({ tight }) => pick(tight)).join('');
  });
  const path = fillLayout(laid, { values, texts });
  return path !== null && Array.isArray(interpret(system, laid, path)) ? textOf(path) : null;
}
