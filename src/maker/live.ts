import { decodeSystem, type ExampleFaultSays, readStated, readsAs, readsOf, testSystem } from '../code';
import type { CodeSystem, Plant } from './schema';

/** How an example stands while its system is being written. */
export interface LiveExample {
  code: string;
  reads: string;
  /** What the code reads now, in short form; empty when nothing. */
  says: string[];
  state: 'agrees' | 'differs' | 'not read' | 'reads not understood';
  /** Why, when it does not agree. */
  why: ExampleFaultSays | null;
}

/** Every example of a system as it decodes at this moment, for showing beside the slots. */
export function liveExamples(system: CodeSystem, plants: readonly Plant[]): LiveExample[] {
  const faults = new Map(testSystem(system, plants).examples.map(({ example, fault }) => [example, fault]));
  return system.examples.map(({ code, reads }, index) => {
    const readings = decodeSystem(code, system, plants);
    const says = [...new Set(readings.map(readsOf))];
    const stated = readStated(reads);
    const why = faults.get(index) ?? null;
    if ('unknown' in stated) return { code, reads, says, state: 'reads not understood', why };
    const agrees = why === null && (stated.nothing ? says.length === 0 : readings.some((one) => readsAs(one, stated)));
    return { code, reads, says, state: agrees ? 'agrees' : says.length === 0 ? 'not read' : 'differs', why };
  });
}
