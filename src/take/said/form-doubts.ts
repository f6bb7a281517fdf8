import type { Doubt } from '../types';
import type { SaidExample } from './example';
import type { SaidLayout } from './layout-words';

/** Whether letters or digits of an example may be others that look the same. */
export const lookAlikes = (examples: readonly SaidExample[]): Doubt | false =>
  examples.some(({ lookAlike }) => lookAlike) && 'look-alike';

/** What speaks against a form of the code as it was read: its time, its examples, and what tells it. */
export const doubtsOfForm = (
  { fits, by }: Pick<SaidLayout, 'fits' | 'by'>,
  examples: readonly SaidExample[],
  backwards: boolean,
): (Doubt | false)[] => [
  backwards && 'backwards',
  !fits && 'examples-disagree',
  by === 'examples' && 'by-examples-only',
  lookAlikes(examples),
];
