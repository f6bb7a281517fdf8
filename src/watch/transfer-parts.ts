import * as z from 'zod';
import { fail, problem, type Result, succeed } from '../problem';
import type { WatchDatabase } from './database';
import { addressOf, isKeptWhole, openLook, storePicture, unpackLook, wholeAddressOf } from './look';
import type { Packing } from './ports';
import { digest1 } from './record/forms-1';
import { picture1 } from './record/picture-1';
import { picture2 } from './record/picture-2';
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
 * Of photos that are kept whole a file carries as many as it can hold beside everything else, some hundreds as chats send
 * them; of the others it carries the small picture.
 */
const mostWholeCharacters = 200_000_000;
/** What is longer is no small picture, as a data address. */
const mostSmallCharacters = pixelsSchema.maxLength ?? Number.POSITIVE_INFINITY;

/** What of the database is read for a file. */
export type ReadParts = Pick<WatchDatabase, 'get' | 'getAllKeys'>;

/** Every look and picture of the list as a file carries them; `leftOut`: photos kept whole for which it has no room. */
export async function carryParts(
  database: ReadParts,
  packing: Packing,
  mostWhole = mostWholeCharacters,
): Promise<{ looks: CarriedLook[]; pictures: CarriedPicture[]; leftOut: number }> {
  const looks: CarriedLook[] = [];
  // One after the other, so that not all of them are unpacked at once.
  for (const hash of await database.getAllKeys('looks')) {
    const stored = await database.get('looks', hash);
    if (!stored) continue;
    const text = await unpackLook(hash, stored.packed, packing);
    looks.push(text.ok ? { hash, look: JSON.parse(text.value) } : { hash, packed: packing.toBase64(stored.packed) });
  }
  const pictures: CarriedPicture[] = [];
  const leftOut = await eachPicture(database, packing, mostWhole, (hash, picture) =>
    pictures.push({ hash, picture: picture() }),
  );
  return { looks, pictures, leftOut };
}

/** How many photos that are kept whole a file has no room for, told before it is written. */
export const countLeftOut = (database: ReadParts, packing: Packing, mostWhole = mostWholeCharacters): Promise<number> =>
  eachPicture(database, packing, mostWhole, () => undefined);

/**
 * Hands over the pictures that a file carries, one after the other, and counts those for which it has no room. What is
 * only counted is not written as text: a full list would hold the page up for seconds.
 */
async function eachPicture(
  database: ReadParts,
  packing: Packing,
  mostWhole: number,
  carry: (hash: string, picture: () => string) => void,
): Promise<number> {
  let [room, leftOut] = [mostWhole, 0];
  for (const hash of await database.getAllKeys('pictures')) {
    const stored = await database.get('pictures', hash);
    if (!stored) continue;
    const needs = addressLength(stored);
    const small = needs <= mostSmallCharacters ? addressOf(stored, packing) : null;
    if (small !== null) carry(hash, () => small);
    else if (!isKeptWhole(stored)) continue;
    else if (needs > room) leftOut += 1;
    else {
      room -= needs;
      carry(hash, () => wholeAddressOf(stored, packing));
    }
  }
  return leftOut;
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
