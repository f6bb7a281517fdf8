import { type SentPhoto, withMoreSent } from '../case';
import type { PhotoRead } from '../photo/read-types';
import { type Anew, judgeAnew } from './judge-anew';
import type { SavedCase } from './saved-case';
import type { FileContent, KeptFile, KeptPicture, Look } from './types';

/** A photo that came another way than by the page, as it was read. */
export interface BroughtPhoto {
  photo: SentPhoto;
  read: PhotoRead;
  /** Small pictures of it and of its lines. */
  pictures: readonly KeptPicture[];
  /** The photo itself, where it is at hand. */
  file?: FileContent;
}

/** The latest look of a case with these photos too, judged anew as of now. One that is there already is read anew. */
export const withSent = (saved: SavedCase, brought: readonly BroughtPhoto[], anew: Anew) =>
  judgeAnew(saved, (look, kept, whole) => changedSent(look, kept, whole, brought), anew);

/** What a look has of photos that came another way than by the page, with these too and without those of these ids. */
export function changedSent(
  look: Look,
  kept: readonly KeptPicture[],
  whole: readonly KeptFile[],
  brought: readonly BroughtPhoto[],
  removed: ReadonlySet<string> = new Set(),
) {
  const fresh = new Map(brought.map((one) => [one.photo.id, one]));
  const { sent, photos, pictures, files } = without(new Set([...removed, ...fresh.keys()]), look, kept, whole);
  const all = withMoreSent(
    sent,
    brought.map(({ photo }) => photo),
  );
  const taken = all.flatMap(({ id }) => fresh.get(id) ?? []);
  return {
    sent: all,
    photos: [...photos, ...taken.map(({ read }) => read)],
    pictures: [...pictures, ...taken.flatMap((one) => one.pictures)].slice(0, mostPictures),
    files: [...files, ...taken.flatMap(({ photo, file }) => (file ? [{ photoId: photo.id, ...file }] : []))],
  };
}

/** The latest look of a case without one of them. */
export const withoutSent = (saved: SavedCase, id: string, anew: Anew) =>
  judgeAnew(saved, (look, kept, whole) => without(new Set([id]), look, kept, whole), anew);

/** As many as a record's form holds. */
const mostPictures = 60;

const without = (
  ids: ReadonlySet<string>,
  { sent, photos }: Look,
  pictures: readonly KeptPicture[],
  files: readonly KeptFile[],
) => ({
  sent: sent.filter(({ id }) => !ids.has(id)),
  photos: photos.filter(({ photoId }) => !ids.has(photoId)),
  pictures: pictures.filter(({ photoId }) => !ids.has(photoId)),
  files: files.filter(({ photoId }) => !ids.has(photoId)),
});
