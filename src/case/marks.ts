import type { Listing } from '../listing/types';
import { findMarks, type MarkRead } from '../mark';
import { type PhotoRead, printedIn } from '../photo';
import { stampLinesOf } from '../stamp';
import { listingText } from './listing-text';

/** A stamped line is searched for marks only when its characters are this certain. */
const readWell = 0.8;

/** Public marks in the listing's words and in what is printed or stamped in its photos. */
export function marksOf(listing: Listing, photos: readonly PhotoRead[]): MarkRead[] {
  const inPhotos = photos.flatMap((photo) => {
    const sure = stampLinesOf(photo).filter(({ free }) => free.probability >= readWell);
    const text = [...new Set([...printedIn(photo), ...sure.map(({ free }) => free.text)])].join('\n');
    return text === '' ? [] : findMarks(text, { foundIn: 'photo', photoId: photo.photoId });
  });
  return [...findMarks(listingText(listing), { foundIn: 'listing', photoId: null }), ...inPhotos];
}
