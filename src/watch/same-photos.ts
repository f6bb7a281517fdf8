import { photoFinder } from '../case';
import type { WatchDatabase } from './database';
import { addressOf, openStoredLook } from './look';
import type { Packing } from './ports';
import { openStored } from './store';
import type { Look, LookName } from './types';

/** A photo of a case that stands in another case too. Photos count from 1; pictures are null where none was kept. */
export interface SamePhotoElsewhere {
  id: string;
  title: string;
  /** When the other one was looked at, as its page was read. */
  readAt: string;
  own: { photo: number; picture: string | null };
  other: { photo: number; picture: string | null };
  mirrored: boolean;
  cut: boolean;
}

/** The photos of a case's latest look that any look of another case has too, each once a case; what is in the bin counts for nothing. */
export async function findSamePhotos(
  database: WatchDatabase,
  id: string,
  packing: Packing,
): Promise<SamePhotoElsewhere[]> {
  const pictureOf = async ({ pictures }: LookName, photoId: string): Promise<string | null> => {
    const kept = pictures.find((one) => one.photoId === photoId && one.lineId === null);
    return kept ? addressOf(await database.get('pictures', kept.picture), packing) : null;
  };
  const looksOf = async (of: string) => {
    const opened = openStored(await database.get('cases', of));
    return opened.ok ? opened.value.looks : [];
  };
  const [latest] = await looksOf(id);
  const own = latest ? await contentOf(database, latest, packing) : null;
  if (!latest || !own || own.photos.length === 0) return [];
  const find = photoFinder(own.photos);
  const found: SamePhotoElsewhere[] = [];
  for (const row of await database.getAll('rows')) {
    if (row.state !== 'readable' || row.id === id || row.removedAt !== null) continue;
    const seen = new Set<string>();
    for (const name of await looksOf(row.id)) {
      const look = await contentOf(database, name, packing);
      if (!look) continue;
      for (const pair of find(look.photos)) {
        if (seen.has(pair.own)) continue;
        seen.add(pair.own);
        found.push({
          id: row.id,
          title: row.title,
          readAt: name.readAt,
          own: { photo: numberIn(own, pair.own), picture: await pictureOf(latest, pair.own) },
          other: { photo: numberIn(look, pair.other), picture: await pictureOf(name, pair.other) },
          mirrored: pair.mirrored,
          cut: pair.cut,
        });
      }
    }
  }
  return found;
}

async function contentOf(database: WatchDatabase, { look }: LookName, packing: Packing): Promise<Look | null> {
  const opened = await openStoredLook(look, (await database.get('looks', look))?.packed, packing);
  return opened.state === 'readable' ? opened.look : null;
}

/** A photo's number, those that were sent after the page's own. */
const numberIn = ({ listing, sent }: Look, photoId: string): number =>
  [...listing.photos, ...sent].findIndex((one) => one.id === photoId) + 1;
