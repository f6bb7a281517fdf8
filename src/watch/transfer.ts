import * as z from 'zod';
import { fail, type Problem, type Result, succeed } from '../problem';
import type { StoredRecord } from './database';
import { joinRecords } from './join';
import { listingKey } from './listing-key';
import { openRecord } from './migrations';
import type { Action } from './store';
import type { Imported, WatchRecord } from './types';

const exportName = 'tellstamp-watch-list';
const exportVersion = 1;
/** Records in one file, and characters: beyond is no export of ours. */
const mostRecords = 20_000;
const mostCharacters = 400_000_000;

const exportSchema = z.looseObject({
  format: z.literal(exportName),
  version: z.number().int().min(1),
  exportedAt: z.string(),
  records: z.array(z.unknown()).max(mostRecords),
});

/** A record of a newer version is taken in whole, as long as it has a name to be kept by. */
const newerSchema = z.looseObject({ id: z.string().min(1).max(80) });

interface Ports {
  now(): string;
  newId(): string;
}

export interface ReadExport {
  /** In the file's order, each with its place in it. */
  records: ({ where: string } & ({ record: WatchRecord } | { newer: StoredRecord }))[];
  refused: Problem[];
}

/** The list as the text of a file: records as they lie in the database, whatever their version. */
export const writeExport = (records: unknown[], now: string): string =>
  `${JSON.stringify({ format: exportName, version: exportVersion, exportedAt: now, records })}\n`;

/** An exported file → its records, and what was refused. Other formats and cut files are told apart. */
export function readExport(text: string): Result<ReadExport> {
  if (text.length > mostCharacters) return fail(problem('import-too-large', 'the file is too large to be an export'));
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    const ours = text.slice(0, 200).includes(`"${exportName}"`);
    return fail(
      ours
        ? problem('import-cut-off', 'the file is cut off: its end is missing')
        : problem('import-not-json', 'the file is not an export of the watch list'),
    );
  }
  const parsed = exportSchema.safeParse(value);
  if (!parsed.success) return fail(problem('import-other-format', 'the file is not an export of the watch list'));
  if (parsed.data.version > exportVersion) {
    return fail(problem('import-newer', 'the file was written by a newer version of the extension'));
  }
  const read: ReadExport = { records: [], refused: [] };
  for (const [index, raw] of parsed.data.records.entries()) {
    const where = placeOf(raw, index);
    const opened = openRecord(raw);
    if (opened.state === 'readable') {
      read.records.push({ where, record: opened.record });
      continue;
    }
    const newer = opened.state === 'newer' ? newerSchema.safeParse(raw) : null;
    if (newer?.success) read.records.push({ where, newer: newer.data });
    else read.refused.push({ ...opened.problem, where });
  }
  return succeed(read);
}

/** "record 3 (Carryall 30)": by number and by what the user knows it by. */
function placeOf(raw: unknown, index: number): string {
  const title = (raw as { title?: unknown } | null)?.title;
  const named = typeof title === 'string' && title !== '' ? ` (${title.slice(0, 80)})` : '';
  return `record ${index + 1}${named}`;
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
    refused: [...read.refused],
  };
  for (const one of read.records) {
    const refusal =
      'newer' in one
        ? await takeNewer(action, one.newer, imported)
        : await take(action, one.record, { now, newId: ports.newId }, imported);
    if (refusal) imported.refused.push({ ...refusal, where: one.where });
  }
  return imported;
}

async function take(
  action: Action,
  other: WatchRecord,
  { now, newId }: { now: string; newId(): string },
  imported: Imported,
): Promise<Problem | null> {
  const present = await presentOf(action, other);
  if (present === null) {
    // An id that another listing has here is nobody's proof: the record gets one of its own.
    const taken = (await action.raw(other.id)) !== undefined;
    const put = await action.put(taken ? { ...other, id: newId() } : other);
    if (put.ok) imported.added += 1;
    return put.ok ? null : put.problem;
  }
  const opened = await action.open(present);
  if (!opened.ok) return { ...opened.problem, what: `the list has it already, and there ${opened.problem.what}` };
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
  const put = await action.put(joined.record);
  if (!put.ok) return put.problem;
  imported.joined.push(put.value.title);
  if (joined.bothNotes) imported.bothNotes.push(put.value.title);
  return null;
}

/** The record that a listing has here by its address: the one of the same id, else one that is not deleted. */
async function presentOf(action: Action, other: WatchRecord): Promise<string | null> {
  const rows = (await action.rowsOf(listingKey(other.case.listing.url))).flatMap((row) =>
    row.state === 'readable' ? [row] : [],
  );
  const present = rows.find(({ id }) => id === other.id) ?? rows.find(({ removedAt }) => removedAt === null) ?? rows[0];
  return present?.id ?? null;
}

/** What this version cannot read it cannot join either: of two that differ the one that is here stays. */
async function takeNewer(action: Action, newer: StoredRecord, imported: Imported): Promise<Problem | null> {
  const present = await action.raw(newer.id);
  if (present === undefined) {
    await action.putNewer(newer);
    imported.newer += 1;
  } else if (JSON.stringify(present) === JSON.stringify(newer)) imported.same += 1;
  else {
    return {
      code: 'record-newer',
      where: 'import',
      what: 'a newer version wrote it, and the list has another state of it',
      remedy: 'Update the extension and import again.',
    };
  }
  return null;
}

const problem = (code: string, what: string): Problem => ({
  code,
  where: 'import',
  what,
  remedy: 'Nothing was changed. Choose a file that the watch list exported.',
});
