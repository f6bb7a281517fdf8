import { type Case, marksOnPhoto } from '../../case';
import { isSentPhoto } from '../../listing/sent-photo-types';
import type { PhotoView } from '../../message/protocol';
import type { KeptFile, KeptPicture } from '../../watch';
import { fileOf } from './sent-photos';

/**
 * What is kept of the photos with a case: the lines that stand in it, and small the first photo, those that are marked, and
 * those that no page shows.
 */
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
  const sent = new Set(kase.listing.photos.filter(isSentPhoto).map(({ id }) => id));
  const whole = small.filter(
    ({ photoId }, index) => index === 0 || sent.has(photoId) || marksOnPhoto(kase, photoId).length > 0,
  );
  return [...whole.slice(0, 40), ...lines].slice(0, 60);
}

/** The photos that no page shows, whole, as far as they are at hand. */
export async function sentFiles(
  { sent = [] }: Pick<Case, 'sent'>,
  files: Readonly<Record<string, string>>,
): Promise<KeptFile[]> {
  const held = await Promise.all(
    sent.map(async ({ id }): Promise<KeptFile[]> => {
      const file = files[id];
      if (file === undefined) return [];
      const bytes = await fetch(file).then((answer) => answer.arrayBuffer());
      const content = fileOf(new Uint8Array(bytes));
      return content ? [{ photoId: id, ...content }] : [];
    }),
  );
  return held.flat();
}
