import type { Claim } from '../claim/types';
import type { Decoding } from '../code/types';
import type { MakerFile } from '../maker/types';
import type { MarkRead } from '../mark/types';
import type { Span } from '../span';
import { fromAges, fromStamping } from './from-ages';
import { fromAging } from './from-aging';
import { fromClaims } from './from-claims';
import { fromDecodings, readingsThatCount } from './from-decodings';
import { editionsNamed, fromMaker } from './from-maker';
import { fromMarks } from './from-marks';
import { fromNumbers, type MeasuredOnPhotos } from './from-numbers';
import { fromPrices, type PricedListing } from './from-prices';
import { type DescribedListing, fromQualities } from './from-qualities';
import { fromSizes, type SizedListing } from './from-sizes';
import { namedModel, namingModel, wordsNaming } from './named-sides';
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
  /** What a hand measured on the photos, and how far two colours are apart. */
  measured?: MeasuredOnPhotos;
  /** ISO 8601 moment of the look, from which ages are counted; without it none is. */
  now?: string;
}

/**
 * Everything that dates or places the piece, as statements in one form: what the seller says, what the codes read,
 * the marks, and dated facts of the maker file that the words call up; then what is held against single facts: ages,
 * sizes, prices and how it is described. Pure; ids follow from the ids that go in.
 */
export function gatherEvidence(given: Gathered): Evidence[] {
  const { claims, decodings, marks, maker, listing, severalPieces, now, measured } = given;
  const dates = datesSaid(given);
  const naming = listing ? namingModel(claims, listing) : null;
  const words = naming ? wordsNaming(naming) : [];
  const model = naming && maker ? (namedModel(maker.models, naming)?.model ?? null) : null;
  const claimed = fromClaims(claims);
  return [
    ...claimed,
    ...fromDecodings(decodings, maker?.maker ?? null),
    ...fromMarks(marks, claims, claimed),
    ...fromMaker(claims, maker, words),
    ...fromStamping(decodings, maker),
    ...(now ? fromAges(claims, now) : []),
    ...(listing && !severalPieces ? fromSizes(claims, listing, maker, dates) : []),
    ...(listing && measured && !severalPieces
      ? fromNumbers(measured, claims, maker, {
          named: model ? [model.name, ...editionsNamed(model, words)] : [],
          dates,
        })
      : []),
    ...(measured && !severalPieces ? fromAging(measured, claims) : []),
    ...(listing ? fromPrices(claims, listing, maker, severalPieces ? null : (model?.name ?? null)) : []),
    ...(listing ? fromQualities(claims, listing, decodings) : []),
  ];
}

/** Every date that the piece is said or read to be of; when it was bought only where nothing else is said. */
function datesSaid({ claims, decodings, maker }: Gathered): Span[] {
  const made = claims.flatMap((claim) => (claim.kind === 'made' ? [claim.span] : []));
  const read = decodings
    .filter(({ accepted }) => accepted)
    .flatMap((decoding) =>
      readingsThatCount(decoding, maker?.maker ?? null).flatMap(({ span }) => (span ? [span] : [])),
    );
  if (made.length + read.length > 0) return [...made, ...read];
  return claims.flatMap((claim) => (claim.kind === 'bought' ? [{ ...claim.span, from: null }] : []));
}
