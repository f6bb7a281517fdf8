import * as z from 'zod';
import type { Dating, Evidence } from '../types';

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
  'another-length',
  'another-number',
  'another-code',
]);
export type Informs = z.infer<typeof informsSchema>;

type DatingSide =
  | 'claimed-date'
  | 'purchase'
  /** The days in which the country claimed existed. */
  | 'country'
  | 'origin'
  | 'code'
  /** When the system or the plant of a code was in use: it falls with the reading. */
  | 'system'
  | 'plant'
  | 'mark'
  | 'material'
  /** When the maker did not use what the words name, but something else. */
  | 'other-material'
  | 'model';
/** What kind of statement a piece of evidence is, as rules know it: what stands aside is known by what it states. */
export type Side = DatingSide | Exclude<Evidence, Dating>['says']['kind'];

export const overSchema = z.enum(['date', 'place', 'size', 'price', 'value', 'quality']);
export type Over = z.infer<typeof overSchema>;

/** Two kinds of statements that are held against each other: when that is hard, and when an agreement is worth telling. */
export interface Rule {
  id: string;
  left: readonly Side[];
  right: readonly Side[];
  over: Over;
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
  /** Dates conflict as they are said, within the room too that they have elsewhere; the rule says why. */
  asSaid?: true;
  /** The left amount is to be at least this share of the right one; without it the two are to meet. */
  leastShare?: number;
  /** Of qualities: the two say the same though no word of theirs is the same. */
  alike?: (left: string, right: string) => boolean;
  /**
   * Which other left statement, if it agrees with the right one, takes the hardness from this one: who says two things
   * contradicts himself before he contradicts anything else.
   */
  yieldsTo?: (left: Evidence, other: Evidence) => boolean;
  /** It compares a code with what follows from it: with the time of its own system or plant. */
  ofOneCode?: 'system' | 'plant';
  /** Where the two are apart the seller said so before: it is no conflict of the piece. */
  apartAsSaid?: true;
  /** It has no check of its own: its conflicts are told with those of several facts. */
  toldTogether?: true;
  /** It holds of a code that its own system excludes as well. */
  evenImpossible?: true;
}
