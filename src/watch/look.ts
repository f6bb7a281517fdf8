import type * as z from 'zod';
import { type Case, findingsOf, ofPage } from '../case';
import { mostSentPhotos } from '../case/types';
import type { MakerFile } from '../maker/types';
import { fail, type Problem, problem, type Result, succeed } from '../problem';
import type { PartsByName } from './parts-by-name';
import type { Packing } from './ports';
import { look1 } from './record/look-1';
import { look2 } from './record/look-2';
import { look3 } from './record/look-3';
import { look4 } from './record/look-4';
import { faultOf } from './record/standing';
import {
  type FileContent,
  type Found,
  type KeptFile,
  type KeptPicture,
  type Look,
  type LookName,
  lookVersion,
  type Parts,
  photoAddressSchema,
  pixelsSchema,
  type StoredPicture,
} from './types';

export interface Judges {
  /** Version of the program. */
  rules: string;
  makers: readonly MakerFile[];
}

/** The look of a case, without anything that was concluded but the kinds and data of what was found. */
export async function lookOf(kase: Case, { rules, makers }: Judges, packing: Packing): Promise<Look> {
  const file = makers.find(({ maker }) => maker === kase.maker);
  return {
    version: lookVersion,
    listing: ofPage(kase.listing),
    photos: kase.photos,
    replies: kase.replies ?? [],
    sent: kase.sent ?? [],
    judged: {
      at: kase.judgedAt ?? kase.listing.readAt,
      rules,
      maker:
        kase.maker === null
          ? null
          : { name: kase.maker, file: file ? await packing.digest(JSON.stringify(file)) : null },
      found: findingsOf(kase).map(foundOf),
    },
  };
}

export const foundOf = ({ check, kind, data }: Found): Found => ({ check, kind, data });

/** A look and its pictures as they are stored, and as their record names them. */
export async function storeLook(look: Look | z.infer<typeof look1>, kept: readonly KeptPicture[], packing: Packing) {
  const text = JSON.stringify(look);
  const hash = await packing.digest(text);
  const stored = await Promise.all(kept.map(({ picture }) => storePicture(picture, packing)));
  const parts: Parts = { looks: [{ hash, packed: await packing.pack(text) }], pictures: stored };
  const pictures = kept.map(({ photoId, lineId }, at) => ({
    photoId,
    lineId,
    picture: (stored[at] as StoredPicture).hash,
  }));
  return { hash, pictures, parts };
}

/** Larger files are not kept: what is kept goes with the whole list into one file. */
const mostKeptFileBytes = 6_000_000;

/** Files of photos as they are stored, and as their record names them; one that is too large, or no photo, is left out. */
export async function storeFiles(kept: readonly KeptFile[], packing: Packing) {
  const stored: StoredPicture[] = [];
  const files: LookName['files'] = [];
  for (const one of kept) {
    if ('file' in one) files.push({ photoId: one.photoId, file: one.file });
    else if (isKeptWhole(one)) {
      const hash = await packing.digest(one.bytes);
      stored.push({ hash, type: one.type, bytes: one.bytes });
      files.push({ photoId: one.photoId, file: hash });
    }
  }
  return { files: files.slice(0, mostSentPhotos), stored };
}

export const isKeptWhole = ({ type, bytes }: FileContent): boolean =>
  bytes.length > 0 &&
  bytes.length <= mostKeptFileBytes &&
  photoAddressSchema.safeParse(`data:${type};base64,AAAA`).success;

/** A picture given as a data address. */
export async function storePicture(picture: string, packing: Packing): Promise<StoredPicture> {
  const [head = '', base64 = ''] = picture.split(',');
  const bytes = packing.fromBase64(base64);
  return { hash: await packing.digest(bytes), type: head.slice('data:'.length, head.indexOf(';')), bytes };
}

/** A stored picture as a data address; null for what holds no pixels. */
export function addressOf(stored: StoredPicture | undefined, packing: Packing): string | null {
  if (!stored) return null;
  const address = wholeAddressOf(stored, packing);
  return pixelsSchema.safeParse(address).success ? address : null;
}

/** A photo that is kept whole as a data address. */
export const wholeAddressOf = ({ type, bytes }: StoredPicture, packing: Packing): string =>
  `data:${type};base64,${packing.toBase64(bytes)}`;

/** The name of the picture that was kept of a whole photo, not of one of its lines; or the picture itself. */
export const pictureOfPhoto = (pictures: readonly KeptPicture[], id: string): string | null =>
  pictures.find(({ photoId, lineId }) => photoId === id && lineId === null)?.picture ?? null;

type OpenedLook = { state: 'readable'; look: Look } | { state: 'newer' | 'damaged'; problem: Problem };

/** A look's content as it was read from its text. Nothing of one that does not fit is changed. */
export function openLook(raw: unknown): OpenedLook {
  const version = (raw as { version?: unknown } | null)?.version;
  if (typeof version === 'number' && version > lookVersion) {
    return { state: 'newer', problem: problem('record-newer', listed, { version }) };
  }
  // What an older one is named by is its own text, which stays as it was written.
  if (version === 1) {
    const older = look1.safeParse(raw);
    return older.success ? readable({ ...older.data, replies: [], sent: [] }) : faultOf(older.error.issues);
  }
  if (version === 2) {
    const older = look2.safeParse(raw);
    return older.success ? readable({ ...older.data, sent: [] }) : faultOf(older.error.issues);
  }
  if (version === 3) {
    const older = look3.safeParse(raw);
    return older.success ? readable(older.data) : faultOf(older.error.issues);
  }
  const parsed = look4.safeParse(raw);
  return parsed.success ? readable(parsed.data) : faultOf(parsed.error.issues);
}

const readable = (look: Omit<Look, 'version'>): OpenedLook => ({
  state: 'readable',
  look: { ...look, version: lookVersion },
});

/** A look as it is kept under its name: what it says, or why that cannot be read. */
export async function openStoredLook(
  hash: string,
  packed: Uint8Array | undefined,
  packing: Packing,
): Promise<OpenedLook> {
  const text = await unpackLook(hash, packed, packing);
  return text.ok ? openLook(JSON.parse(text.value)) : { state: 'damaged', problem: text.problem };
}

/** A look by its name, out of the database or a file. */
export const readLook = async (parts: PartsByName, hash: string, packing: Packing) =>
  openStoredLook(hash, (await parts.look(hash))?.packed, packing);

/** The text of a look under its name; a problem where it is missing, cut off, or another one. */
export async function unpackLook(
  hash: string,
  packed: Uint8Array | undefined,
  packing: Packing,
): Promise<Result<string>> {
  if (!packed) return fail(problem('look-missing', listed));
  try {
    const text = await packing.unpack(packed);
    return (await packing.digest(text)) === hash ? succeed(text) : fail(spoilt);
  } catch {
    return fail(spoilt);
  }
}

const listed = 'watch list';
const spoilt = problem('look-spoilt', listed);
