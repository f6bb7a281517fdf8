import type { Case } from '../../case';
import type { PhotoView } from '../../message/protocol';
import type { KeptPicture } from '../../watch';

/** What is kept of the photos with a case: the lines that stand in it, and the first photo small. */
export function pickPictures(kase: Case, views: Record<string, PhotoView>): KeptPicture[] {
  const lines = kase.decodings.flatMap(({ from }): KeptPicture[] => {
    if (from.kind !== 'photo') return [];
    const crop = views[from.photoId]?.crops.find(({ lineId }) => lineId === from.lineId);
    return crop ? [{ photoId: from.photoId, lineId: from.lineId, picture: crop.picture }] : [];
  });
  const first = kase.listing.photos.flatMap(({ id }): KeptPicture[] => {
    const picture = views[id]?.thumbnail;
    return picture ? [{ photoId: id, lineId: null, picture }] : [];
  })[0];
  return (first ? [first, ...lines] : lines).slice(0, 40);
}
