import type { CodeSystem, Plant } from '../maker/types';
import { bookPlants, openSystem, type SystemFault } from './book';
import { readExactly } from './exact';
import type { ExampleFaultSays } from './fault';
import { readStated, readsAs, readsOf } from './reads';
import type { Reading } from './types';

export interface ExampleFault {
  example: number;
  fault: ExampleFaultSays;
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
      return [{ example, fault: { kind: 'not-understood', unknown: stated.unknown, reads } }];
    }
    const { exact, impossible } = readExactly(open, code);
    const readings = exact.map(({ reading }) => reading);
    if (stated.nothing) {
      if (readings.length === 0) return [];
      return [{ example, fault: { kind: 'reads-something', code, says: readsOf(readings[0]!) } }];
    }
    if (readings.length === 0) return [{ example, fault: { kind: 'does-not-fit', code, impossible } }];
    const fitting = exact.filter(({ reading }) => readsAs(reading, stated));
    if (fitting.some(({ meaning }) => meaning.inPeriod)) return [];
    if (fitting.length > 0) return [{ example, fault: { kind: 'outside-period', code, reads } }];
    return [{ example, fault: { kind: 'reads-otherwise', code, says: readings.map(readsOf), reads } }];
  });
  return { layouts: [], examples };
}

/** Every reading of a code under one system as it is written in a file, each character taken as it stands. */
export function decodeSystem(code: string, system: CodeSystem, plants: readonly Plant[]): Reading[] {
  const { system: open } = openSystem(system, null, bookPlants(plants));
  return readExactly(open, code).exact.map(({ reading }) => reading);
}
