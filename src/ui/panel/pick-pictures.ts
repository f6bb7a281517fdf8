import { type Case, marksOnPhoto } from '../../case';
import type { PhotoView } from '../../message/protocol';
import type { KeptPicture } from '../../watch';

/** What is kept of the photos with a case: the lines that stand in it, and small the first photo and those that are marked. */
export function pickPictures(kase: Case, views: Record<string, PhotoView>): KeptPicture[] {
  const lines = kase.decodings.flatMap(({ from }): KeptPicture[] => {
    if (from.kind !== 'photo') return [];
    const crop = views[from.photoId]?.crops.find(({ lineId }) => lineId === from.lineId);
    return crop ? [{ photoId: from.photoId, lineId: from.lineId, picture: crop.picture }] : [];
  });
  const small = kase.listing.photos.flatMap(({ id }): KeptPicture[] => {
    const picture = views[id]?.thumbnail;
    return picture ? [{ photoId: id, lineId: null, picture }] : [];
  });
  const whole = small.filter(({ photoId }, index) => index === 0 || marksOnPhoto(kase, photoId).length > 0);
  return [...whole.slice(0, 20), ...lines].slice(0, 40);
}
