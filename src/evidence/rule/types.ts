import * as z from 'zod';
import type { Evidence } from '../types';

/** Why an agreement of two facts tells something: how the one could have excluded the other. */
export const informsSchema = z.enum([
  /** Both name dates that might as well have been others. */
  'another-date',
  /** The one holds for some years only, with a first and a last. */
  'closed-period',
  /** A country that is no more, or was not yet. */
  'former-country',
  /** Bought as new, not long after the making. */
  'bought-new',
  'another-place',
]);
export type Informs = z.infer<typeof informsSchema>;

/** What kind of statement a piece of evidence is, as rules know it. */
export type Side =
  | 'claimed-date'
  | 'purchase'
  /** The days in which the country claimed existed. */
  | 'country'
  | 'origin'
  | 'code'
  /** When the system or the plant of a code was in use: it falls with the reading. */
  | 'code-period'
  | 'mark'
  | 'material'
  /** When the maker did not use what the words name, but something else. */
  | 'other-material'
  | 'model';

/** Two kinds of statements that are held against each other: when that is hard, and when an agreement is worth telling. */
export interface Rule {
  id: string;
  left: readonly Side[];
  right: readonly Side[];
  over: 'date' | 'place';
  /** How the one could have excluded the other; null where it hardly could: what agrees with everything tells nothing. */
  informs: (left: Evidence, right: Evidence) => Informs | null;
  /**
   * Whether their agreement counts where several agree: an open period excludes too little, though it may be worth
   * telling. Without it what informs counts.
   */
  narrows?: (left: Evidence, right: Evidence) => boolean;
  /** Where this is false a conflict is unlikely, not impossible, however firm both are; the rule says why. */
  hardWhen?: (left: Evidence, right: Evidence) => boolean;
  /** Days by which the two may be apart beyond the room that each has of its own. */
  room?: (left: Evidence, right: Evidence) => number;
  /**
   * Which other left statement, if it agrees with the right one, takes the hardness from this one: who says two things
   * contradicts himself before he contradicts anything else.
   */
  yieldsTo?: (left: Evidence, other: Evidence) => boolean;
}
