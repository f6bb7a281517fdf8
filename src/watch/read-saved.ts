import { type Correction, previousOf, type Reply } from '../case';
import type { PreviousLook } from '../check/types';
import type { MakerFile } from '../maker/types';
import { fail, type Result, succeed } from '../problem';
import type { WatchDatabase } from './database';
import { addressOf, openStoredLook, readLook } from './look';
import { type PartsByName, partsIn } from './parts-by-name';
import type { Packing, WatchPorts } from './ports';
import { knownCorrections, listingOf, type SavedCase, type SavedLook } from './saved-case';
import type { BroughtPhoto } from './sent';
import { openStored } from './store';
import type { FileContent, Look, LookName, StoredPicture } from './types';

/** A record with all its looks, as they lie in the database at one moment. */
export async function readSaved(
  database: WatchDatabase,
  id: string,
  { packing, makers }: Pick<WatchPorts, 'packing' | 'makers'>,
): Promise<Result<SavedCase>> {
  const transaction = database.transaction(['cases', 'looks', 'pictures'], 'readonly');
  const opened = openStored(await transaction.objectStore('cases').get(id));
  if (!opened.ok) return opened;
  const record = opened.value;
  const names = new Set(record.looks.flatMap(({ pictures }) => pictures.map(({ picture }) => picture)));
  const [packed, pictures] = await Promise.all([
    Promise.all(record.looks.map(({ look }) => transaction.objectStore('looks').get(look))),
    Promise.all([...names].map((name) => transaction.objectStore('pictures').get(name))),
  ]);
  const kept = new Map(pictures.flatMap((one): [string, StoredPicture][] => (one ? [[one.hash, one]] : [])));
  const makerFiles = await makers(record.shown.address);
  const openedLook = async (name: LookName, bytes: Uint8Array | undefined): Promise<SavedLook> => {
    const { look: hash, readAt, judgedAt, corrections, files } = name;
    const content = await openStoredLook(hash, bytes, packing);
    if (content.state !== 'readable') return { ...content, readAt, judgedAt, corrections };
    return {
      state: 'readable',
      readAt,
      judgedAt,
      corrections,
      files,
      look: content.look,
      makerFile: await standingOf(content.look.judged.maker, makerFiles, packing),
      pictures: name.pictures.flatMap(({ photoId, lineId, picture }) => {
        const address = addressOf(kept.get(picture), packing);
        return address === null ? [] : [{ photoId, lineId, picture: address }];
      }),
    };
  };
  const looks = await Promise.all(record.looks.map((name, at) => openedLook(name, packed[at]?.packed)));
  return succeed({ record, looks, makers: makerFiles });
}

/** What a look gives the next one at the same listing: what it compares with, what the seller replied, what the buyer set right. */
export interface EarlierLook {
  look: PreviousLook;
  replies: Reply[];
  corrections: Correction[];
  /** Photos that came another way than by the page. */
  sent: BroughtPhoto[];
}

/** The latest look of a record, as the next one needs it. */
export async function readEarlier(
  database: WatchDatabase,
  id: string,
  { packing, makers }: Pick<WatchPorts, 'packing' | 'makers'>,
): Promise<Result<EarlierLook | null>> {
  const opened = openStored(await database.get('cases', id));
  if (!opened.ok) return opened;
  const { looks, shown } = opened.value;
  const [latest] = looks;
  if (!latest) return succeed(null);
  const parts = partsIn(database);
  const content = await readLook(parts, latest.look, packing);
  if (content.state !== 'readable') return fail(content.problem);
  const { replies } = content.look;
  const look = previousOf(listingOf(content.look), await makers(shown.address), replies);
  const sent = await sentOf(content.look, latest, parts, packing);
  return succeed({ look, replies, corrections: knownCorrections(latest), sent });
}

/** The photos of a look that came another way than by the page, with what is kept of each. */
export async function sentOf(
  { sent, photos }: Look,
  latest: LookName,
  parts: PartsByName,
  packing: Packing,
): Promise<BroughtPhoto[]> {
  const sentIds = new Set(sent.map(({ id }) => id));
  const whole = new Map(
    await Promise.all(latest.files.map(async ({ photoId, file }) => [photoId, await readFile(parts, file)] as const)),
  );
  const pictures = (
    await Promise.all(
      latest.pictures
        .filter(({ photoId }) => sentIds.has(photoId))
        .map(async ({ photoId, lineId, picture }) => {
          const address = addressOf(await parts.picture(picture), packing);
          return address === null ? [] : [{ photoId, lineId, picture: address }];
        }),
    )
  ).flat();
  return sent.flatMap((photo) => {
    const read = photos.find(({ photoId }) => photoId === photo.id);
    const file = whole.get(photo.id);
    if (!read) return [];
    return [{ photo, read, pictures: pictures.filter(({ photoId }) => photoId === photo.id), ...(file && { file }) }];
  });
}

/** A photo that is kept whole, by the name of its file; null where there is none. */
export async function readFile(parts: PartsByName, name: string): Promise<FileContent | null> {
  const stored = await parts.picture(name);
  return stored ? { type: stored.type, bytes: stored.bytes } : null;
}

/** Whether the maker file of then is the one of today. */
async function standingOf(
  then: Look['judged']['maker'],
  files: readonly MakerFile[],
  packing: Packing,
): Promise<'same' | 'changed' | 'gone' | 'unknown'> {
  if (!then?.file) return 'unknown';
  const file = files.find(({ maker }) => maker === then.name);
  if (!file) return 'gone';
  return (await packing.digest(JSON.stringify(file))) === then.file ? 'same' : 'changed';
}
