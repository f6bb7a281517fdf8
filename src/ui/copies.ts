import { isCopy } from '../check';
import type { PhotoRead } from '../photo/read-types';
import type { Copies } from '../words';
import { strings } from '../words';

export function countCopies(photos: readonly PhotoRead[]): Copies {
  const copies = photos.filter(isCopy);
  return { all: copies.length, small: copies.filter((photo) => !isFullSize(photo)).length };
}

/** Whether nothing larger of the photo is known, so that the right to its host would bring nothing. */
export const isFullSize = (photo: PhotoRead): boolean => photo.state === 'read' && photo.came?.fullSize !== false;

/** "small copy, 600 of 1200 pixels wide"; empty for a photo that was read as the listing has it. */
export function copyWords(photo: PhotoRead | undefined): string {
  if (photo?.state !== 'read' || !photo.came || !isCopy(photo)) return '';
  const { came, width } = photo;
  if (came.way === 'capture' && came.part) return strings.copies.part;
  if (came.fullSize) return strings.copies.fromPage;
  const largest = came.way === 'capture' ? (came.largest?.width ?? null) : null;
  return largest === null || largest <= width ? strings.copies.small : strings.copies.smallOf(width, largest);
}
