import * as z from 'zod';
import { fail, problem, type Result, succeed } from '../problem';
import type { WatchDatabase } from './database';
import { isKeptWhole, openLook, storePicture, unpackLook, wholeAddressOf } from './look';
import type { Packing } from './ports';
import { digest1 } from './record/forms-1';
import { picture1 } from './record/picture-1';
import { picture2 } from './record/picture-2';
import { namesIn } from './rows';
import { pixelsSchema, type StoredLook, type StoredPicture } from './types';

/** A look as a file carries it: its content, or its bytes where they hold no content that could be written out. */
export type CarriedLook = { hash: string; look: unknown } | { hash: string; packed: string };
export type CarriedPicture = z.infer<typeof picture1>;
const carriedPicture = z.union([picture1, picture2]);
export type TakenLook = Result<StoredLook>;

const carriedLook = z.union([
  z.strictObject({ hash: digest1, look: z.unknown() }),
  z.strictObject({ hash: digest1, packed: z.string().regex(/^[A-Za-z0-9+/]*={0,2}$/) }),
]);

/**
 * Photos that are kept whole and go into one file, some hundreds as chats send them. Where there are more, further files
 * carry them, each with the records that name them.
 */
const mostWholeCharacters = 200_000_000;
/** What is longer is no small picture, as a data address. */
const mostSmallCharacters = pixelsSchema.maxLength ?? Number.POSITIVE_INFINITY;

/** What of the database is read for a file. */
export type ReadParts = Pick<WatchDatabase, 'get' | 'getAll' | 'getAllKeys' | 'getAllKeysFromIndex'>;

/** The names of the pictures of an export, by the file that carries them. */
export interface Shared {
  /** Small pictures; the first file has them all. */
  small: string[];
  /** Photos kept whole, file by file; at least one file. */
  whole: string[][];
}

/**
 * Shares the pictures of the list out among as many files as they need, each photo into the first that has room. What is
 * only shared out is not written as text: a full list would hold the page up for seconds.
 */
export async function sharePictures(database: ReadParts, mostWhole = mostWholeCharacters): Promise<Shared> {
  const small: string[] = [];
  const files: { whole: string[]; room: number }[] = [{ whole: [], room: mostWhole }];
  for (const hash of await database.getAllKeys('pictures')) {
    const stored = await database.get('pictures', hash);
    if (!stored) continue;
    const needs = addressLength(stored);
    if (isSmall(stored)) small.push(hash);
    else if (isKeptWhole(stored)) {
      const open = files.find(({ room }) => needs <= room);
      const file = open ?? { whole: [], room: mostWhole };
      if (!open) files.push(file);
      file.room -= needs;
      file.whole.push(hash);
    }
  }
  return { small, whole: files.map(({ whole }) => whole) };
}

const isSmall = (stored: StoredPicture): boolean =>
  stored.bytes.length > 0 &&
  addressLength(stored) <= mostSmallCharacters &&
  pixelsSchema.safeParse(`data:${stored.type};base64,AAAA`).success;

interface Carried {
  records: unknown[];
  looks: CarriedLook[];
  pictures: CarriedPicture[];
}

/** What one file of an export carries: the first all records, each further one those whose photos it has. */
export async function carryFile(
  database: ReadParts,
  packing: Packing,
  { small, whole }: Shared,
  file: number,
): Promise<Carried> {
  const photos = whole[file] ?? [];
  if (file === 0) {
    const looks = await carryLooks(database, packing, await database.getAllKeys('looks'));
    const records = await database.getAll('cases');
    return { records, looks, pictures: await carryPictures(database, packing, [...small, ...photos]) };
  }
  const ids = new Set<string>();
  for (const photo of photos) for (const id of await database.getAllKeysFromIndex('rows', 'byUse', photo)) ids.add(id);
  const records: unknown[] = [];
  for (const id of ids) records.push(await database.get('cases', id));
  const looks = await carryLooks(database, packing, [...namesIn(records)]);
  return { records, looks, pictures: await carryPictures(database, packing, photos) };
}

async function carryLooks(database: ReadParts, packing: Packing, hashes: readonly string[]): Promise<CarriedLook[]> {
  const looks: CarriedLook[] = [];
  // One after the other, so that not all of them are unpacked at once.
  for (const hash of hashes) {
    const stored = await database.get('looks', hash);
    if (!stored) continue;
    const text = await unpackLook(hash, stored.packed, packing);
    looks.push(text.ok ? { hash, look: JSON.parse(text.value) } : { hash, packed: packing.toBase64(stored.packed) });
  }
  return looks;
}

async function carryPictures(
  database: ReadParts,
  packing: Packing,
  hashes: readonly string[],
): Promise<CarriedPicture[]> {
  const pictures: CarriedPicture[] = [];
  for (const hash of hashes) {
    const stored = await database.get('pictures', hash);
    if (stored) pictures.push({ hash, picture: wholeAddressOf(stored, packing) });
  }
  return pictures;
}

/** Characters of a picture as a data address. */
const addressLength = ({ type, bytes }: StoredPicture): number =>
  `data:${type};base64,`.length + 4 * Math.ceil(bytes.length / 3);

/** The looks of a file by name. One that is spoilt, or another one than its name says, is told to the records that name it. */
export async function readLooks(carried: readonly unknown[], packing: Packing): Promise<Map<string, TakenLook>> {
  const taken = new Map<string, TakenLook>();
  for (const one of carried) {
    const parsed = carriedLook.safeParse(one);
    if (!parsed.success) continue;
    const { hash } = parsed.data;
    if ('packed' in parsed.data) {
      taken.set(hash, succeed({ hash, packed: packing.fromBase64(parsed.data.packed) }));
      continue;
    }
    const text = JSON.stringify(parsed.data.look);
    const opened = openLook(parsed.data.look);
    if (opened.state === 'damaged') taken.set(hash, fail(opened.problem));
    else if ((await packing.digest(text)) !== hash) taken.set(hash, fail(spoilt));
    else taken.set(hash, succeed({ hash, packed: await packing.pack(text) }));
  }
  return taken;
}

/** The pictures of a file by name; what is no picture, or another one than its name says, is left out. */
export async function readPictures(carried: readonly unknown[], packing: Packing): Promise<Map<string, StoredPicture>> {
  const taken = new Map<string, StoredPicture>();
  for (const one of carried) {
    const parsed = carriedPicture.safeParse(one);
    if (!parsed.success) continue;
    const stored = await storePicture(parsed.data.picture, packing);
    if (stored.hash === parsed.data.hash) taken.set(stored.hash, stored);
  }
  return taken;
}

const spoilt = problem('look-spoilt', 'import');
