import type { PhotoRead } from '../photo/read-types';
import { because } from './reasons';
import type { Reason } from './types';

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

/** The same for checks whose words stand with the languages. */
export function orWhyCopied<T>(found: T[], photos: PhotoRead[]): T[] | { cannotTell: Reason } {
  const why = found.length === 0 ? whyCopied(photos) : null;
  return why === null ? found : { cannotTell: why };
}
