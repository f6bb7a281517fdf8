import { isTooWeakRead, type PhotoRead } from '../../photo/read-types';
import { isCopy, whyCopied } from '../copies';
import { whyUnread } from '../photo-places';
import { because } from '../reasons';
import type { Reason } from '../types';
import { defineFact } from './define';

/** That every photo was read as it is and was sharp enough to show a stamp if there were one; if not, why. */
export const clearPhotos = defineFact<true>(({ photos }) =>
  photos.length > 0 && photos.every(isClear) ? { is: true } : { cannotTell: whyNotClear(photos) },
);

const isClear = (photo: PhotoRead): boolean => photo.state === 'read' && !isTooWeakRead(photo) && !isCopy(photo);

function whyNotClear(photos: PhotoRead[]): Reason {
  if (photos.length === 0 || photos.some((photo) => photo.state === 'unread')) return whyUnread(photos);
  const copied = whyCopied(photos);
  if (copied) return copied;
  return because('photos-too-weak', { weak: photos.filter(isTooWeakRead).length, of: photos.length });
}
