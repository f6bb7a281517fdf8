import { type ComparablePhoto, comparablePhotos, samePhotosAmong } from '../case';
import type { WatchDatabase } from './database';
import { withLikenesses } from './likenesses';
import { addressOf, pictureOfPhoto, readLook } from './look';
import { partsIn } from './parts-by-name';
import type { Packing } from './ports';
import { openStored } from './store';
import type { Look, LookName } from './types';

/** One of the two: its number on the page then, from 1, the picture that was kept of it, and when the page was read. */
export interface PhotoThen {
  photo: number;
  picture: string | null;
  readAt: string;
}

/** A photo of a case that stands in another case too. */
export interface SamePhotoElsewhere {
  id: string;
  title: string;
  own: PhotoThen;
  /** Whether the case's latest look has the photo no more. */
  earlier: boolean;
  other: PhotoThen;
  mirrored: boolean;
  cut: boolean;
}

/** A look with its content, and those of its photos that may be found again. */
interface Seen {
  name: LookName;
  look: Look;
  photos: readonly ComparablePhoto[];
}

/**
 * The photos of any look of a case that any look of another case has too, each once a case; what is in the bin counts for
 * nothing.
 */
export async function findSamePhotos(
  database: WatchDatabase,
  id: string,
  packing: Packing,
): Promise<SamePhotoElsewhere[]> {
  const then = async ({ name, look }: Seen, photoId: string): Promise<PhotoThen> => {
    const kept = pictureOfPhoto(name.pictures, photoId);
    const picture = kept && addressOf(await database.get('pictures', kept), packing);
    return { photo: numberIn(look, photoId), picture, readAt: name.readAt };
  };
  const own = withoutRepeats(await looksOf(database, id, packing));
  if (own.length === 0) return [];
  const found: SamePhotoElsewhere[] = [];
  for (const row of await database.getAll('rows')) {
    if (row.state !== 'readable' || row.id === id || row.removedAt !== null) continue;
    const told = new Set<string>();
    for (const other of await looksOf(database, row.id, packing)) {
      for (const { earlier, ...seen } of own) {
        for (const pair of samePhotosAmong(seen.photos, other.photos)) {
          const which = `${seen.name.look} ${pair.own}`;
          if (told.has(which)) continue;
          told.add(which);
          found.push({
            id: row.id,
            title: row.title,
            own: await then(seen, pair.own),
            earlier,
            other: await then(other, pair.other),
            mirrored: pair.mirrored,
            cut: pair.cut,
          });
        }
      }
    }
  }
  return found;
}

/** The photos of a case, look by look, the latest first: of an earlier look those that no later one has. */
function withoutRepeats(looks: readonly Seen[]) {
  const kept: (Seen & { earlier: boolean })[] = [];
  for (const [at, seen] of looks.entries()) {
    const later = new Set(kept.flatMap(({ photos }) => samePhotosAmong(photos, seen.photos).map(({ other }) => other)));
    const photos = seen.photos.filter(({ photoId }) => !later.has(photoId));
    if (photos.length > 0) kept.push({ ...seen, photos, earlier: at > 0 });
  }
  return kept;
}

/** The looks of a case that can be read, the latest first. */
async function looksOf(database: WatchDatabase, id: string, packing: Packing): Promise<Seen[]> {
  const opened = openStored(await database.get('cases', id));
  const seen: Seen[] = [];
  for (const name of opened.ok ? opened.value.looks : []) {
    const content = await readLook(partsIn(database), name.look, packing);
    if (content.state !== 'readable') continue;
    const { look } = content;
    const photos = comparablePhotos(await withLikenesses(database, name.look, look.photos));
    seen.push({ name, look, photos });
  }
  return seen;
}

/** A photo's number, those that were sent after the page's own. */
const numberIn = ({ listing, sent }: Look, photoId: string): number =>
  [...listing.photos, ...sent].findIndex((one) => one.id === photoId) + 1;
