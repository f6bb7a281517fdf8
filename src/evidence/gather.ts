import type { Claim } from '../claim/types';
import type { Decoding } from '../code/types';
import type { MakerFile } from '../maker/types';
import type { MarkRead } from '../mark/types';
import { fromAges, fromStamping } from './from-ages';
import { fromClaims } from './from-claims';
import { fromDecodings } from './from-decodings';
import { fromMaker } from './from-maker';
import { fromMarks } from './from-marks';
import { fromPrices, type PricedListing } from './from-prices';
import { type DescribedListing, fromQualities } from './from-qualities';
import { fromSizes, type SizedListing } from './from-sizes';
import type { Evidence } from './types';

export interface Gathered {
  claims: readonly Claim[];
  decodings: readonly Decoding[];
  marks: readonly MarkRead[];
  /** The file of the piece's maker, null when none fits. */
  maker: MakerFile | null;
  /** The page, for its sizes, prices and state; without it only date and place are asked for. */
  listing?: SizedListing & PricedListing & DescribedListing;
  /** The page offers several pieces: its sizes and model may be another one's. */
  severalPieces?: boolean;
  /** ISO 8601 moment of the look, from which ages are counted; without it none is. */
  now?: string;
}

/**
 * Everything that dates or places the piece, as statements in one form: what the seller says, what the codes read,
 * the marks, and dated facts of the maker file that the words call up; then what is held against single facts: ages,
 * sizes, prices and how it is described. Pure; ids follow from the ids that go in.
 */
export function gatherEvidence(given: Gathered): Evidence[] {
  const { claims, decodings, marks, maker, listing, severalPieces, now } = given;
  const claimed = fromClaims(claims);
  return [
    ...claimed,
    ...fromDecodings(decodings, maker?.maker ?? null),
    ...fromMarks(marks, claims, claimed),
    ...fromMaker(claims, maker),
    ...fromStamping(decodings, maker),
    ...(now ? fromAges(claims, now) : []),
    ...(listing && !severalPieces ? fromSizes(claims, listing, maker) : []),
    ...(listing ? fromPrices(claims, listing, maker) : []),
    ...(listing ? fromQualities(claims, listing, decodings) : []),
  ];
}
