import { isLikeness, lacksLikeness, withLikenessOfPicture } from '../case';
import type { PhotoRead } from '../photo';
import type { WatchDatabase } from './database';
import { pictureOfPhoto, readLook } from './look';
import { partsIn } from './parts-by-name';
import type { Packing } from './ports';
import { openStored } from './store';
import type { LookName, StoredPicture } from './types';

/** By what a look's photos are known again that were read before likenesses were kept; the look itself never changes. */
export interface StoredLikenesses {
  /** The name of the look. */
  hash: string;
  of: { photoId: string; likeness: string }[];
}

/** What a kept picture is known again by; null where it shows next to nothing or cannot be decoded. */
export type LikenessOfPicture = (picture: StoredPicture) => Promise<string | null>;

/**
 * Works out, one look after the other, the likenesses that looks lack whose pictures are kept; how many photos got one.
 * A look is gone through once: what it was found to lack stands beside it from then on.
 */
export async function workOutLikenesses(
  database: WatchDatabase,
  packing: Packing,
  likenessOf: LikenessOfPicture,
): Promise<number> {
  const known = new Set(await database.getAllKeys('likenesses'));
  let workedOut = 0;
  for (const hash of await database.getAllKeys('looks')) {
    if (known.has(hash)) continue;
    const named = await nameOf(database, hash);
    if (!named) continue;
    const of = await likenessesOf(database, packing, named, likenessOf);
    // A look that ended meanwhile leaves nothing behind.
    const transaction = database.transaction(['looks', 'likenesses'], 'readwrite');
    if ((await transaction.objectStore('looks').getKey(hash)) !== undefined)
      await transaction.objectStore('likenesses').put({ hash, of });
    await transaction.done;
    workedOut += of.length;
  }
  return workedOut;
}

/** A look as the record that needs it names it. */
async function nameOf(database: WatchDatabase, hash: string): Promise<LookName | null> {
  for (const id of await database.getAllKeysFromIndex('rows', 'byUse', hash)) {
    const opened = openStored(await database.get('cases', id));
    const named = opened.ok ? opened.value.looks.find(({ look }) => look === hash) : undefined;
    if (named) return named;
  }
  return null;
}

async function likenessesOf(
  database: WatchDatabase,
  packing: Packing,
  { look, pictures }: LookName,
  likenessOf: LikenessOfPicture,
): Promise<StoredLikenesses['of']> {
  const opened = await readLook(partsIn(database), look, packing);
  if (opened.state !== 'readable') return [];
  const of: StoredLikenesses['of'] = [];
  for (const photo of opened.look.photos) {
    if (!lacksLikeness(photo)) continue;
    const kept = pictureOfPhoto(pictures, photo.photoId);
    const picture = kept && (await database.get('pictures', kept));
    const likeness = picture ? await likenessOf(picture) : null;
    if (isLikeness(likeness)) of.push({ photoId: photo.photoId, likeness });
  }
  return of;
}

/** A look's photos, those that were read before likenesses were kept with what was worked out of their pictures. */
export async function withLikenesses(
  database: WatchDatabase,
  look: string,
  photos: readonly PhotoRead[],
): Promise<readonly PhotoRead[]> {
  const stored = await database.get('likenesses', look);
  if (!stored || stored.of.length === 0) return photos;
  const worked = new Map(stored.of.map(({ photoId, likeness }) => [photoId, likeness]));
  return photos.map((photo) => {
    const likeness = worked.get(photo.photoId);
    return likeness === undefined ? photo : withLikenessOfPicture(photo, likeness);
  });
}
