import type { Evidence } from '../types';

/** What kind of statement a piece of evidence is, as rules know it. */
export type Side = 'claimed-date' | 'purchase' | 'code' | 'mark';

/** Two kinds of statements that are held against each other, and when their agreement is worth telling. */
export interface Rule {
  id: string;
  left: Side;
  right: Side;
  /** Whether the one could have excluded the other: what agrees with everything tells nothing. */
  informs: (left: Evidence, right: Evidence) => boolean;
}
