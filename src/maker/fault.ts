import type { ExampleFaultSays, LayoutFaultSays } from '../code';
import type { Problem } from '../problem';

/** A value of a file as a fault names it. */
export type ShownValue = { kind: 'nothing' | 'list' | 'group' } | { kind: 'text'; text: string };
/** What a value is counted in. */
export type Unit = 'characters' | 'entries' | 'plain';

/** What is wrong with a maker file, field by field; its sentence stands with the languages. */
export type MakerFault =
  | LayoutFaultSays
  | ExampleFaultSays
  | { kind: 'both-layouts' | 'no-layout' | 'too-many-to-test' | 'no-amount' }
  | { kind: 'unknown-fields'; names: string[] }
  /** `type`: as the form of the file calls it. */
  | { kind: 'missing'; type: string }
  | { kind: 'wrong-type'; value: ShownValue; type: string }
  | { kind: 'empty'; limit: number; unit: Unit }
  /** `form`: the name of a form, or what the library says of it. */
  | { kind: 'wrong-form'; value: ShownValue; form: string }
  /** `known`: what may stand there; none where that is told elsewhere. */
  | { kind: 'not-possible' | 'no-slot'; value: ShownValue; known: string[] }
  | { kind: 'not-for-slot'; value: ShownValue; slot: string }
  | { kind: 'too-small' | 'too-large'; value: ShownValue; limit: number; unit: Unit }
  | { kind: 'no-country'; place: string }
  | { kind: 'backwards'; from: string; to: string }
  | { kind: 'no-such-date'; period: string[] }
  | { kind: 'double-id' | 'no-system'; id: string }
  | { kind: 'double-model'; name: string }
  | { kind: 'no-part'; part: string }
  | { kind: 'more-than'; least: number; most: number }
  | { kind: 'newer-format'; format: number; most: number }
  | { kind: 'file-characters'; is: number; most: number }
  | { kind: 'more-characters' | 'more-values' | 'deeper'; most: number }
  /** `said`: what the parser of JSON says of it. */
  | { kind: 'not-json'; said: string }
  | { kind: 'more-faults'; number: number };

/** A problem of a maker file: `code` tells its sort, `fault` what exactly is wrong. */
export interface MakerProblem extends Problem {
  fault: MakerFault;
  /** The line of the file's text where its field stands. */
  line?: number;
}

/** A problem at a field. */
export const makerProblem = (code: string, where: string, fault: MakerFault): MakerProblem => ({ code, where, fault });
