import type { Decoding } from '../code/types';
import type { Listing } from '../listing/types';
import type { PhotoRead } from '../photo/read-types';
import { findMeant } from './correction';
import { type Correction, type NewCorrection, type PhotoMeant, pieceOfStamp } from './correction-types';
import type { Case } from './types';

/** The buyer says that the stamp in a photo is on one of the pieces on offer. */
export const stampIsOn = (photo: PhotoMeant, piece: string): NewCorrection => ({
  of: 'seen',
  photo,
  target: null,
  to: { what: pieceOfStamp, value: piece, unit: null, where: null },
});

interface Placed {
  correction: Correction;
  photoId: string;
  piece: string;
}

interface Shown {
  listing: Listing;
  photos: readonly PhotoRead[];
  corrections: readonly Correction[];
}

/** The stamps of which the buyer said whose they are, by the photos that show them. */
export const stampsPlaced = ({ listing, photos, corrections }: Shown): Placed[] =>
  corrections.flatMap((correction) => {
    if (correction.of !== 'seen' || correction.to?.what !== pieceOfStamp || correction.photo === null) return [];
    const photoId = findMeant(correction.photo, listing.photos, photos);
    return photoId === null ? [] : [{ correction, photoId, piece: String(correction.to.value) }];
  });

/**
 * The codes without those of another piece than the chosen one. Where the buyer said of a code that it is on the chosen
 * piece, it stands for it alone.
 */
export function codesNotElsewhere(
  decodings: readonly Decoding[],
  chosen: string | null,
  placed: readonly Pick<Placed, 'photoId' | 'piece'>[],
): Decoding[] {
  if (chosen === null) return [...decodings];
  const pieceOf = ({ from }: Decoding) =>
    from.kind === 'photo' ? placed.find(({ photoId }) => photoId === from.photoId)?.piece : undefined;
  const own = decodings.filter((one) => pieceOf(one) === chosen);
  return own.length > 0 ? own : decodings.filter((one) => pieceOf(one) === undefined);
}

/** The pieces on offer that a stamp may be on beside the chosen one. */
export const otherPieces = ({ lot }: Pick<Case, 'lot'>): string[] =>
  lot && lot.chosen !== null ? lot.pieces.filter((piece) => piece !== lot.chosen) : [];
