import { type Claim, lotOf, placeClaims } from '../claim';
import type { Decoding } from '../code/types';
import type { Listing } from '../listing/types';
import type { Correction, NewCorrection } from './correction-types';
import { sameData } from './same-data';
import type { Case, CaseLot } from './types';

interface Read {
  listing: Listing;
  claims: readonly Claim[];
  corrections: readonly Correction[];
}

/**
 * The pieces on offer where a listing sells several, and which claims count: those of the sale, and of the piece that the
 * buyer chose. Null where one piece is sold, or the buyer says so.
 */
export function caseLotOf({ listing, claims, corrections }: Read): CaseLot | null {
  const lot = lotOf(listing);
  if (!lot) return null;
  const { words, pieces } = lot;
  const set = corrections.find((one) => one.of === 'piece' && sameData(one.among, amongOf(lot)));
  if (set?.of === 'piece' && set.to === null) return null;
  const chosen = set?.of === 'piece' ? set.to : null;
  const places = placeClaims(listing, lot, claims);
  const judging = claims.filter(({ id }) => {
    const place = places.get(id);
    return place === 'all' || (typeof place === 'object' && place.piece === chosen);
  });
  const notPlaced = claims.filter(({ id, kind }) => kind !== 'price' && places.get(id) === 'not-placed');
  return { words, pieces, chosen, judging: judging.map(({ id }) => id), notPlaced: notPlaced.map(({ id }) => id) };
}

/** Pieces without a name are told by their number. */
const amongOf = ({ pieces }: Pick<CaseLot, 'pieces'>): string[] => (pieces.length > 0 ? pieces : ['1', '2']);

/** The correction that chooses a piece; null says that it is one. */
export const choosePiece = (lot: Pick<CaseLot, 'pieces'>, piece: string | null): NewCorrection => ({
  of: 'piece',
  among: amongOf(lot),
  to: piece,
});

/** The claims that count: all of one piece's; of several pieces those of the chosen one and of the sale. */
export const judgingClaims = ({ claims, lot }: Pick<Case, 'claims' | 'lot'>): Claim[] =>
  lot ? claims.filter(({ id }) => lot.judging.includes(id)) : claims;

/**
 * The codes that may be held against the claims. With several pieces on offer they are the chosen one's only where all
 * show the same code: of two codes nobody knows which is whose until one is struck.
 */
export function codesOfPiece(decodings: Decoding[], lot: CaseLot | null): Decoding[] {
  if (lot === null) return decodings;
  if (lot.chosen === null) return [];
  const codes = new Set(
    decodings.filter(({ accepted }) => accepted).map(({ readings, code }) => readings[0]?.text ?? code),
  );
  return codes.size <= 1 ? decodings : [];
}
