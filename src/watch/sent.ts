import { mostSentPhotos, type SentPhoto } from '../case';
import type { PhotoRead } from '../photo/read-types';
import { type Anew, judgeAnew } from './judge-anew';
import type { SavedCase } from './saved-case';
import type { KeptPicture } from './types';

/** A photo that came another way than by the page, as it was read. */
export interface BroughtPhoto {
  photo: SentPhoto;
  read: PhotoRead;
  /** Small pictures of it and of its lines. */
  pictures: readonly KeptPicture[];
}

/** The latest look of a case with these photos too, judged anew as of now. One that is there already is read anew. */
export const withSent = (saved: SavedCase, brought: readonly BroughtPhoto[], anew: Anew) =>
  judgeAnew(
    saved,
    ({ sent = [], photos }, pictures) => {
      const isBrought = among(brought.map(({ photo }) => photo.id));
      const all = [...sent.filter(({ id }) => !isBrought(id)), ...brought.map(({ photo }) => photo)];
      return {
        sent: all.slice(0, mostSentPhotos),
        photos: [...photos.filter(({ photoId }) => !isBrought(photoId)), ...brought.map(({ read }) => read)],
        pictures: [
          ...pictures.filter(({ photoId }) => !isBrought(photoId)),
          ...brought.flatMap((one) => one.pictures),
        ].slice(0, mostPictures),
      };
    },
    anew,
  );

/** The latest look of a case without one of them. */
export const withoutSent = (saved: SavedCase, id: string, anew: Anew) =>
  judgeAnew(
    saved,
    ({ sent = [], photos }, pictures) => ({
      sent: sent.filter((one) => one.id !== id),
      photos: photos.filter(({ photoId }) => photoId !== id),
      pictures: pictures.filter(({ photoId }) => photoId !== id),
    }),
    anew,
  );

/** As many as a record's form holds. */
const mostPictures = 60;

const among = (ids: readonly string[]) => {
  const set = new Set(ids);
  return (id: string) => set.has(id);
};
