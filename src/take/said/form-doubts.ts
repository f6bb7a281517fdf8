import type { Doubt } from '../types';
import type { SaidExample } from './example';
import type { SaidLayout } from './layout-words';

/** What speaks against a form of the code as it was read: its time, its examples, and what tells it. */
export const doubtsOfForm = (
  { fits, by }: SaidLayout,
  examples: readonly SaidExample[],
  backwards: boolean,
): (Doubt | false)[] => [
  backwards && 'backwards',
  !fits && 'examples-disagree',
  by === 'examples' && 'by-examples-only',
  examples.some(({ lookAlike }) => lookAlike) && 'look-alike',
];
