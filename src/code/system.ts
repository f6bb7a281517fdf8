import type { CodeSystem, Plant } from '../maker/types';
import { bookPlants, openSystem, type SystemFault } from './book';
import { readExactly } from './exact';
import { expectedWords } from './expected';
import { readStated, readsAs, readsOf } from './reads';
import type { Reading } from './types';

export interface ExampleFault {
  example: number;
  what: string;
}

/** What is wrong with a system of a maker file: its layouts, and examples that do not decode as they say. */
export function testSystem(
  system: CodeSystem,
  plants: readonly Plant[],
): { layouts: SystemFault[]; examples: ExampleFault[] } {
  const { system: open, faults } = openSystem(system, null, bookPlants(plants));
  if (faults.length > 0) return { layouts: faults, examples: [] };
  const examples = system.examples.flatMap(({ code, reads }, example): ExampleFault[] => {
    const stated = readStated(reads);
    if ('unknown' in stated) {
      return [{ example, what: `"${stated.unknown}" in "${reads}" is neither a date nor a place code` }];
    }
    const { exact, impossible } = readExactly(open, code);
    const readings = exact.map(({ reading }) => reading);
    if (stated.nothing) {
      return readings.length === 0 ? [] : [{ example, what: `"${code}" reads ${readsOf(readings[0]!)}, not nothing` }];
    }
    const wrong = impossible
      ? `: ${impossible.slot} "${impossible.value}" should be ${expectedWords(impossible.expected)}`
      : '';
    if (readings.length === 0) return [{ example, what: `"${code}" does not fit the system's layout${wrong}` }];
    const fitting = exact.filter(({ reading }) => readsAs(reading, stated));
    if (fitting.some(({ meaning }) => meaning.inPeriod)) return [];
    if (fitting.length > 0)
      return [{ example, what: `"${code}" reads ${reads}, which lies outside the system's period` }];
    const said = readings.map(readsOf).join(' or ');
    return [{ example, what: `"${code}" reads ${said}, but the example says "${reads}"` }];
  });
  return { layouts: [], examples };
}

/** Every reading of a code under one system as it is written in a file, each character taken as it stands. */
export function decodeSystem(code: string, system: CodeSystem, plants: readonly Plant[]): Reading[] {
  const { system: open } = openSystem(system, null, bookPlants(plants));
  return readExactly(open, code).exact.map(({ reading }) => reading);
}
