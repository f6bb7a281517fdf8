import {
  observed,
  type PhotoRead,
  type Prepared,
  prepared,
  type SamePhoto,
  samePhoto,
  seenIn,
  valueIn,
} from '../photo';

/** A photo that is one with another, each by its id. */
export type SamePhotoPair = SamePhoto & { own: string; other: string };

/** A photo with what it is held against others by, which takes longer to make than to compare. */
export interface ComparablePhoto {
  photoId: string;
  likeness: Prepared;
}

/** Photos that may be found again; those without a likeness are found nowhere. */
export const comparablePhotos = (photos: readonly PhotoRead[]): ComparablePhoto[] =>
  photos.flatMap((photo) => {
    const [seen] = seenIn(photo, 'likeness');
    if (!isLikeness(seen?.value)) return [];
    return [{ photoId: photo.photoId, likeness: prepared(seen.value, seen.uncertainty ?? 0) }];
  });

/** Which of some photos are among others, each with the first that it is one with. */
export const samePhotosAmong = (own: readonly ComparablePhoto[], others: readonly ComparablePhoto[]): SamePhotoPair[] =>
  own.flatMap(({ photoId, likeness }) => {
    for (const other of others) {
      const same = samePhoto(likeness, other.likeness);
      if (same) return [{ ...same, own: photoId, other: other.photoId }];
    }
    return [];
  });

/** Whether a photo was read, and nothing was written down by which it is known again. */
export const lacksLikeness = (photo: PhotoRead): boolean =>
  photo.state === 'read' && !isLikeness(valueIn(photo, 'likeness'));

/**
 * A kept picture has lost detail in which photos differ: by so much two of them may seem more alike than they are. Found on
 * 18,872 pairs of photos that differ; docs/figures.md says what is known again with it.
 */
const lessTold = 0.005;

/** A photo with what was worked out of a small picture that was kept of it. */
export function withLikenessOfPicture(photo: PhotoRead, likeness: string): PhotoRead {
  if (photo.state !== 'read') return photo;
  const others = photo.observations.filter(({ what }) => what !== 'likeness');
  const own = observed(photo.photoId, 'likeness', likeness, { uncertainty: lessTold });
  return { ...photo, observations: [...others, own] };
}

/** As it is written now, or was by an older build. A file from elsewhere may say anything. */
export const isLikeness = (value: unknown): value is string =>
  typeof value === 'string' && /^([A-Za-z0-9+/]{1024}|\.[A-Za-z0-9+/]{1,4096})$/.test(value);
