import type { PhotoRead } from '../stamp/types';
import { because } from './reasons';
import type { Reason } from './types';
import { countWords } from './wording';

type ReadPhoto = Extract<PhotoRead, { state: 'read' }>;

/**
 * Whether a photo was read from a stand-in: a picture of the page, or a smaller version than the listing has. Its
 * size, sharpness, shape and ground are the stand-in's own and say nothing of the photo.
 */
export const isCopy = (photo: PhotoRead): boolean =>
  photo.state === 'read' && photo.came !== undefined && (photo.came.way === 'capture' || !photo.came.fullSize);

/** The photos that were read as the listing has them: those that a check may judge. */
export const readAsGiven = (photos: PhotoRead[]): ReadPhoto[] =>
  photos.filter((photo): photo is ReadPhoto => photo.state === 'read' && !isCopy(photo));

/** Why a check cannot tell beside copies; null where there is none. */
export function whyCopied(photos: PhotoRead[]): Reason | null {
  const copies = photos.filter(isCopy).length;
  return copies === 0 ? null : because('copies-only', { copies, of: photos.length });
}

/** The same in words, for checks that still carry theirs. */
export function copiesWords(photos: PhotoRead[]): string | null {
  const copies = photos.filter(isCopy).length;
  if (copies === 0) return null;
  const read = copies === 1 ? 'was read from a copy' : 'were read from copies';
  return `${copies} of ${countWords(photos.length, 'photo')} ${read}, which ${copies === 1 ? 'says' : 'say'} nothing of the listing’s own`;
}

/** What a check found, or "cannot tell" where it found nothing and copies may have hidden something. */
export const orCopied = <T>(found: T[], photos: PhotoRead[]): T[] | { cannotTell: string } => {
  const why = found.length === 0 ? copiesWords(photos) : null;
  return why === null ? found : { cannotTell: why };
};

/** The same for checks whose words stand with the languages. */
export function orWhyCopied<T>(found: T[], photos: PhotoRead[]): T[] | { cannotTell: Reason } {
  const why = found.length === 0 ? whyCopied(photos) : null;
  return why === null ? found : { cannotTell: why };
}
