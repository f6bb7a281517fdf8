import type { Impossible } from './interpret';
import type { GroupName } from './slot/cell';

/** What is wrong with a layout; its sentence stands with the languages. */
export type LayoutFaultSays =
  /** The fewest digits of the serial number are more than the most. */
  | { kind: 'serial-digits' }
  | { kind: 'code-too-long'; most: number }
  /** More slots than these may be left out or change their length. */
  | { kind: 'too-open'; most: number }
  /** `group`: what the slots write together. */
  | { kind: 'two-ways' | 'twice' | 'half'; group: GroupName };

/** How an example decodes otherwise than it says. Readings stand in the form of a file: "1995-01, BE". */
export type ExampleFaultSays =
  | { kind: 'not-understood'; unknown: string; reads: string }
  | { kind: 'reads-something'; code: string; says: string }
  | { kind: 'does-not-fit'; code: string; impossible: Impossible | null }
  | { kind: 'outside-period'; code: string; reads: string }
  | { kind: 'reads-otherwise'; code: string; says: string[]; reads: string };
