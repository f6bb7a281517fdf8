import type { MakerFault } from '../maker';
import type { Kit } from './kit';

type Of<K extends string> = MakerFault extends infer F
  ? F extends { kind: infer Own }
    ? K extends Own
      ? Omit<F, 'kind'> & { kind: K }
      : never
    : never
  : never;

/** What is wrong with a maker file, in one language: without a full stop. */
export interface FaultWords {
  faults: { [K in MakerFault['kind']]: (fault: Of<K>, kit: Kit) => string };
  /** What was to stand there instead, where that can be said. */
  expected: { [K in MakerFault['kind']]?: (fault: Of<K>, kit: Kit) => string };
  /** The fault with the line of the file where it stands. */
  inLine: (line: number, fault: string) => string;
}
