import { type SentPhoto, withMoreSent, withSentPhotos } from '../../case';
import type { Listing } from '../../listing/types';
import { toBase64 } from '../../message/bytes';
import type { PhotoBytes, PhotoView } from '../../message/protocol';
import { readImageHeader } from '../../photo';
import type { Result } from '../../problem';
import { readOnceMore } from '../../reader';
import type { BroughtPhoto, FileContent, KeptPicture } from '../../watch';
import { unreadView } from './keep-photos';
import type { PanelState } from './state';

/** A photo that the buyer brings, with its bytes. */
export interface GivenPhoto {
  photo: SentPhoto;
  bytes: PhotoBytes;
}

interface Desk {
  state(): PanelState;
  /** Shows a change, with the case made anew. */
  recompute(part: Partial<PanelState>): void;
  hold(id: string, bytes: PhotoBytes): void;
  letGo(id: string): void;
  read(id: string): Promise<Result<PhotoView>>;
  /** A photo is done with. */
  done(id: string, outcome: Result<PhotoView>): void;
}

/** Photos that came another way than by the page: they join the listing's own, and go the same way from their bytes on. */
export function sendingAt({ state, recompute, hold, letGo, read, done }: Desk) {
  const among = (listing: Listing, sent: readonly SentPhoto[]) => ({ sent, listing: withSentPhotos(listing, sent) });
  const isThere = (id: string) => state().sent.some((one) => one.id === id);
  /** Being read now: a page that is read again in between reads them no second time. */
  const busy = new Set<string>();

  /** Reads those that are at hand and were not read, one after the other. */
  async function readSent(): Promise<void> {
    for (const { id } of state().sent) {
      if (busy.has(id) || state().views[id] || state().files[id] === undefined) continue;
      busy.add(id);
      const outcome = await readOnceMore(() => read(id));
      busy.delete(id);
      if (isThere(id)) done(id, outcome);
    }
  }

  return {
    readSent,

    /** Takes photos in and reads them. One that is here already is shown with what is said of it now. */
    async addSent(given: readonly GivenPhoto[]): Promise<void> {
      const { listing, sent } = state();
      if (listing === null) return;
      const kept = withMoreSent(
        sent,
        given.map(({ photo }) => photo),
      );
      for (const { photo, bytes } of given) {
        if (kept.includes(photo) && state().files[photo.id] === undefined) hold(photo.id, bytes);
      }
      const ids = new Set(kept.map(({ id }) => id));
      recompute({ ...among(listing, kept), removedSent: state().removedSent.filter((id) => !ids.has(id)) });
      await readSent();
    },

    /** Takes one out again. */
    removeSent(id: string): void {
      const { listing, sent, views } = state();
      if (listing === null) return;
      letGo(id);
      const { [id]: _, ...others } = views;
      recompute({
        ...among(
          listing,
          sent.filter((one) => one.id !== id),
        ),
        views: others,
        removedSent: [...new Set([...state().removedSent, id])],
      });
    },
  };
}

/** The bytes of a photo that is kept whole, as they came. */
export const bytesOfKept = ({ type, bytes }: FileContent): PhotoBytes => ({
  base64: toBase64(bytes),
  mediaType: type,
  came: { way: 'page', fullSize: true },
});

/** What a kept photo shows again: what was read of it then, and its small pictures. */
export const viewOfKept = ({ read, pictures }: BroughtPhoto): PhotoView => ({
  read,
  thumbnail: pictures.find(({ lineId }) => lineId === null)?.picture ?? null,
  crops: pictures.flatMap(({ lineId, picture }) => (lineId === null ? [] : [{ lineId, picture }])),
});

/** What was read of the photos that came another way: in this sitting, or when the case was kept. */
export const viewsOfSent = (
  sent: readonly SentPhoto[],
  views: PanelState['views'],
  kept: readonly BroughtPhoto[],
): PanelState['views'] =>
  Object.fromEntries(
    sent.flatMap(({ id }) => {
      const one = kept.find(({ photo }) => photo.id === id);
      const view = views[id] ?? (one && viewOfKept(one));
      return view ? [[id, view]] : [];
    }),
  );

/** What is kept of a photo that was read, or could not be. */
export function keptOfView(photo: SentPhoto, outcome: Result<PhotoView>): BroughtPhoto {
  if (!outcome.ok) return { photo, read: unreadView(photo.id, outcome.problem).read, pictures: [] };
  const { read, thumbnail, crops } = outcome.value;
  const small: KeptPicture[] = thumbnail ? [{ photoId: photo.id, lineId: null, picture: thumbnail }] : [];
  return { photo, read, pictures: [...small, ...crops.map((crop) => ({ photoId: photo.id, ...crop }))] };
}

/** A photo as it is kept whole: what it is tell its bytes, whatever it was called; null for no photo. */
export function fileOf(bytes: Uint8Array): FileContent | null {
  const header = readImageHeader(bytes, 'photo');
  return header.ok ? { type: header.value.mime, bytes } : null;
}
