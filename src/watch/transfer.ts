import * as z from 'zod';
import { fail, type Problem, problem, type Result, succeed, within } from '../problem';
import type { StoredRecord } from './database';
import { joinRecords } from './join';
import { listingKey } from './listing-key';
import { bringForward } from './migrations';
import type { Packing } from './ports';
import { namesIn } from './rows';
import type { Action } from './store';
import {
  carryFile,
  type ReadParts,
  readLooks,
  readPictures,
  type Shared,
  sharePictures,
  type TakenLook,
} from './transfer-parts';
import type { Imported, Parts, StoredPicture, WatchRecord } from './types';

const exportName = 'tellstamp-watch-list';
/** In files of version 1 everything lay within the records. */
const exportVersion = 2;
/** Records in one file, looks and pictures, and characters: beyond is no export of ours. */
const mostRecords = 20_000;
const mostParts = 50 * mostRecords;
const mostCharacters = 400_000_000;

const exportSchema = z.looseObject({
  format: z.literal(exportName),
  version: z.number().int().min(1),
  exportedAt: z.string(),
  records: z.array(z.unknown()).max(mostRecords),
  looks: z.array(z.unknown()).max(mostParts).default([]),
  pictures: z.array(z.unknown()).max(mostParts).default([]),
  /** Photos kept whole that are not in the file; their small pictures are. */
  leftOut: z.number().int().nonnegative().catch(0),
  /** Which of how many files of one export it is. */
  file: z
    .strictObject({ number: z.number().int().min(1), of: z.number().int().min(2) })
    .nullable()
    .catch(null),
});

/** A record of a newer version is taken in whole, as long as it has a name to be kept by. */
const newerSchema = z.looseObject({ id: z.string().min(1).max(80) });

interface Ports {
  packing: Packing;
  now(): string;
  newId(): string;
}

export interface ReadExport {
  /** In the file's order, each with its place in it. */
  records: ({ where: string; parts: Parts } & ({ record: WatchRecord } | { newer: StoredRecord }))[];
  refused: Problem[];
  leftOut: number;
  file: Imported['file'];
}

/**
 * One of the files of the list, counted from 0, as text: records as they lie in the database, whatever their version, and
 * what they name.
 */
export async function writeExport(
  database: ReadParts,
  packing: Packing,
  { file, now, mostWhole }: { file: number; now: string; mostWhole?: number | undefined },
): Promise<string> {
  const shared = await sharePictures(database, mostWhole);
  const { whole } = shared;
  const leftOut = file === 0 ? elsewhereThanFirst(shared) : 0;
  const which = whole.length > 1 ? { file: { number: file + 1, of: whole.length } } : {};
  const head = { format: exportName, version: exportVersion, exportedAt: now, leftOut, ...which };
  return `${JSON.stringify({ ...head, ...(await carryFile(database, packing, shared, file)) })}\n`;
}

/** How many files an export of the list takes, told before any is written, and how many photos are not in the first. */
export async function filesOfExport(database: ReadParts): Promise<{ files: number; photos: number }> {
  const shared = await sharePictures(database);
  return { files: shared.whole.length, photos: elsewhereThanFirst(shared) };
}

const elsewhereThanFirst = ({ whole }: Shared): number => whole.slice(1).flat().length;

/** An exported file → its records, and what was refused. Other formats and cut files are told apart. */
export async function readExport(text: string, packing: Packing): Promise<Result<ReadExport>> {
  if (text.length > mostCharacters) return fail(problem('import-too-large', 'import'));
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    const ours = text.slice(0, 200).includes(`"${exportName}"`);
    return fail(problem(ours ? 'import-cut-off' : 'import-not-json', 'import'));
  }
  const parsed = exportSchema.safeParse(value);
  if (!parsed.success) return fail(problem('import-other-format', 'import'));
  if (parsed.data.version > exportVersion) return fail(problem('import-newer', 'import'));
  const { records, looks, pictures, leftOut, file } = parsed.data;
  const taken = { looks: await readLooks(looks, packing), pictures: await readPictures(pictures, packing) };
  const read: ReadExport = { records: [], refused: [], leftOut, file };
  for (const [index, raw] of records.entries()) {
    const where = placeOf(raw, index);
    const opened = await bringForward(raw, packing);
    if (opened.state === 'readable') {
      const named = partsOf(opened.record, taken);
      if (!named.ok) read.refused.push({ ...named.problem, where });
      else {
        const parts = {
          looks: [...opened.parts.looks, ...named.value.looks],
          pictures: [...opened.parts.pictures, ...named.value.pictures],
        };
        read.records.push({ where, record: opened.record, parts });
      }
      continue;
    }
    const newer = opened.state === 'newer' ? newerSchema.safeParse(raw) : null;
    const named = newer?.success ? partsOf(newer.data, taken) : null;
    if (newer?.success && named?.ok) read.records.push({ where, newer: newer.data, parts: named.value });
    else read.refused.push({ ...(named?.ok === false ? named.problem : opened.problem), where });
  }
  return succeed(read);
}

/** What a record names of the file's looks and pictures; a problem where the file spoils one of them. */
function partsOf(
  record: unknown,
  taken: { looks: Map<string, TakenLook>; pictures: Map<string, StoredPicture> },
): Result<Parts> {
  const parts: Parts = { looks: [], pictures: [] };
  for (const name of namesIn(record)) {
    const look = taken.looks.get(name);
    if (look?.ok === false) return look;
    if (look) parts.looks.push(look.value);
    const picture = taken.pictures.get(name);
    if (picture) parts.pictures.push(picture);
  }
  return succeed(parts);
}

/** "3 (Carryall 30)": by number and by what the user knows it by. */
function placeOf(raw: unknown, index: number): string {
  const title = (raw as { title?: unknown } | null)?.title;
  const named = typeof title === 'string' && title !== '' ? ` (${title.slice(0, 80)})` : '';
  return `${index + 1}${named}`;
}

/** Takes the records of a file into the list. What the list has already is joined, never written over. */
export async function takeIn(action: Action, read: ReadExport, ports: Ports): Promise<Imported> {
  const now = ports.now();
  const imported: Imported = {
    added: 0,
    joined: [],
    bothNotes: [],
    same: 0,
    stayDeleted: 0,
    newer: 0,
    leftOut: read.leftOut,
    file: read.file,
    filled: 0,
    refused: [...read.refused],
  };
  for (const one of read.records) {
    const refusal =
      'newer' in one
        ? await takeNewer(action, one.newer, one.parts, imported)
        : await take(action, one.record, one.parts, { now, newId: ports.newId }, imported);
    if (refusal) imported.refused.push({ ...refusal, where: one.where });
  }
  return imported;
}

async function take(
  action: Action,
  other: WatchRecord,
  parts: Parts,
  { now, newId }: { now: string; newId(): string },
  imported: Imported,
): Promise<Problem | null> {
  const brought = new Set(parts.looks.map(({ hash }) => hash));
  for (const { look } of other.looks) {
    if (!brought.has(look) && !(await action.hasLook(look))) return problem('look-missing', 'import');
  }
  const present = await presentOf(action, other);
  if (present === null) {
    // An id that another listing has here is nobody's proof: the record gets one of its own.
    const taken = (await action.raw(other.id)) !== undefined;
    const put = await action.put(taken ? { ...other, id: newId() } : other, parts);
    if (put.ok) imported.added += 1;
    return put.ok ? null : put.problem;
  }
  imported.filled += await action.fill(present, parts);
  const opened = await action.open(present);
  if (!opened.ok) return problem('record-here-unread', 'import', { why: within(opened.problem) });
  const own = opened.value;
  // A deletion holds against what was last changed before it, and one that was made elsewhere deletes nothing here.
  if (own.removedAt !== null && (other.removedAt !== null || other.changedAt <= own.removedAt)) {
    imported.stayDeleted += 1;
    return null;
  }
  const joined = joinRecords({ ...own, removedAt: null }, other, 'import', now);
  if (!joined.changed && own.removedAt === null) {
    imported.same += 1;
    return null;
  }
  const put = await action.put(joined.record, parts);
  if (!put.ok) return put.problem;
  imported.joined.push(put.value.title);
  if (joined.bothNotes) imported.bothNotes.push(put.value.title);
  return null;
}

/** The record that a listing has here by its address: the one of the same id, else one that is not deleted. */
async function presentOf(action: Action, other: WatchRecord): Promise<string | null> {
  const rows = (await action.rowsOf(listingKey(other.shown.address))).flatMap((row) =>
    row.state === 'readable' ? [row] : [],
  );
  const present = rows.find(({ id }) => id === other.id) ?? rows.find(({ removedAt }) => removedAt === null) ?? rows[0];
  return present?.id ?? null;
}

/** What this version cannot read it cannot join either: of two that differ the one that is here stays. */
async function takeNewer(
  action: Action,
  newer: StoredRecord,
  parts: Parts,
  imported: Imported,
): Promise<Problem | null> {
  const present = await action.raw(newer.id);
  if (present === undefined) {
    await action.putNewer(newer, parts);
    imported.newer += 1;
  } else if (JSON.stringify(present) === JSON.stringify(newer)) {
    imported.filled += await action.fill(newer.id, parts);
    imported.same += 1;
  } else {
    return problem('record-newer', 'import', { version: null, differs: true });
  }
  return null;
}
