import { fail, type Problem, problem, type Result, succeed } from '../problem';
import type { StoredRecord, WatchDatabase } from './database';
import type { Inside } from './loss';
import { bringForward, openRecord } from './migrations';
import type { Packing } from './ports';
import { placeOfFault } from './record/standing';
import { latestFirst, notYet, rowOf, rowsFormat, type WatchRow } from './rows';
import { type Parts, recordVersion, type WatchRecord, watchRecordSchema } from './types';

/** What one action changed: rows as they are now, and ids of records that are no more. */
export interface Change {
  rows: WatchRow[];
  gone: string[];
}

/** What an action may do inside its transaction. Each call reads or writes no record but the one that it names. */
export interface Action {
  raw(id: string): Promise<unknown>;
  open(id: string): Promise<Result<WatchRecord>>;
  /** Rows of the records in the bin. */
  removedRows(): Promise<WatchRow[]>;
  /** Rows of a listing by its key. */
  rowsOf(key: string): Promise<WatchRow[]>;
  /** `parts` holds the looks and pictures that may not be there yet; those that the record names are kept of them. */
  put(record: WatchRecord, parts?: Parts): Promise<Result<WatchRecord>>;
  /** Takes in a record of a newer version as it is. */
  putNewer(raw: StoredRecord, parts: Parts): Promise<void>;
  /** Puts in the looks and pictures that a record names and that are not there; how many pictures. */
  fill(id: string, parts: Parts): Promise<number>;
  drop(id: string): Promise<void>;
  hasLook(hash: string): Promise<boolean>;
}

export type Outcome<T> = { done: true; value: T; change: Change; inside: Inside } | { done: false; problem: Problem };

const allStores = ['cases', 'looks', 'pictures', 'likenesses', 'rows', 'meta'] as const;

/** One user action: one transaction, on the disk before it counts as done. One that fails changes nothing. */
export async function carryOut<T>(
  database: WatchDatabase,
  work: (action: Action) => Promise<Result<T>>,
): Promise<Outcome<T>> {
  const transaction = database.transaction(allStores, 'readwrite', { durability: 'strict' });
  const cases = transaction.objectStore('cases');
  const rows = transaction.objectStore('rows');
  const meta = transaction.objectStore('meta');
  const written = new Map<string, WatchRow>();
  const gone: string[] = [];
  let added = 0;
  /** A look or picture ends with the last record that names it. */
  const endUnused = async (names: readonly string[]) => {
    for (const name of names) {
      if ((await rows.index('byUse').count(name)) > 0) continue;
      for (const store of ['looks', 'pictures', 'likenesses'] as const)
        await transaction.objectStore(store).delete(name);
    }
  };
  const has = async (store: 'looks' | 'pictures', hash: string) =>
    (await transaction.objectStore(store).getKey(hash)) !== undefined;
  const write = async (raw: StoredRecord, parts: Parts = { looks: [], pictures: [] }) => {
    const row = rowOf(raw);
    const before = await rows.get(row.id);
    if (before === undefined) added += 1;
    const uses = new Set(row.uses);
    for (const look of parts.looks) if (uses.has(look.hash)) await transaction.objectStore('looks').put(look);
    for (const one of parts.pictures) if (uses.has(one.hash)) await transaction.objectStore('pictures').put(one);
    await cases.put(raw);
    await rows.put(row);
    await endUnused((before?.uses ?? []).filter((name) => !uses.has(name)));
    written.set(row.id, row);
  };
  const action: Action = {
    raw: (id) => cases.get(id),
    open: async (id) => openStored(await cases.get(id)),
    removedRows: () => rows.index('byRemoval').getAll(),
    rowsOf: (key) => rows.index('byKey').getAll(key),
    async put(record, parts) {
      const checked = checkRecord(record);
      if (checked.ok) await write(checked.value, parts);
      return checked;
    },
    putNewer: write,
    async fill(id, { looks, pictures }) {
      const uses = new Set((await rows.get(id))?.uses);
      let filled = 0;
      for (const look of looks)
        if (uses.has(look.hash) && !(await has('looks', look.hash))) await transaction.objectStore('looks').put(look);
      for (const one of pictures) {
        if (!uses.has(one.hash) || (await has('pictures', one.hash))) continue;
        await transaction.objectStore('pictures').put(one);
        filled += 1;
      }
      // What was worked out of the pictures is worked out anew, of those that were missing too.
      if (filled > 0) for (const name of uses) await transaction.objectStore('likenesses').delete(name);
      return filled;
    },
    async drop(id) {
      const uses = (await rows.get(id))?.uses ?? [];
      await cases.delete(id);
      await rows.delete(id);
      await endUnused(uses);
      added -= 1;
      written.delete(id);
      gone.push(id);
    },
    hasLook: (hash) => has('looks', hash),
  };
  const giveUp = () => {
    transaction.done.catch(() => undefined);
    transaction.abort();
  };
  const result = await work(action).catch((error: unknown) => {
    giveUp();
    throw error;
  });
  if (!result.ok) {
    giveUp();
    return { done: false, problem: result.problem };
  }
  const generation = Number((await meta.get('generation')) ?? 0) + (written.size + gone.length > 0 ? 1 : 0);
  const records = Number((await meta.get('records')) ?? 0) + added;
  await meta.put(generation, 'generation');
  await meta.put(records, 'records');
  const identity = String(await meta.get('identity'));
  await transaction.done;
  const change = { rows: [...written.values()], gone };
  return { done: true, value: result.value, change, inside: { identity, generation, records } };
}

/** What the database says of itself, at one moment. */
export async function readInside(database: WatchDatabase): Promise<Inside> {
  const meta = database.transaction('meta').store;
  const [identity, generation, records] = await Promise.all([
    meta.get('identity'),
    meta.get('generation'),
    meta.get('records'),
  ]);
  return { identity: String(identity), generation: Number(generation ?? 0), records: Number(records ?? 0) };
}

/** Every row, the latest change first. */
export const readRows = async (database: WatchDatabase): Promise<WatchRow[]> =>
  (await database.getAll('rows')).sort(latestFirst);

/**
 * Sees at opening whether rows and number of records are those of the records that are there, and makes them anew when
 * not: after a change of what rows hold, and after records were lost. Afterwards each change keeps them so. Records of
 * older versions are brought to this one first.
 */
export async function holdRows(database: WatchDatabase, packing: Packing): Promise<void> {
  const transaction = database.transaction(['cases', 'rows', 'meta'], 'readonly');
  const [format, version, noted, records, rows] = await Promise.all([
    transaction.objectStore('meta').get('rowsFormat'),
    transaction.objectStore('meta').get('recordVersion'),
    transaction.objectStore('meta').get('records'),
    transaction.objectStore('cases').index('byId').count(),
    transaction.objectStore('rows').count(),
  ]);
  if (format === rowsFormat && version === recordVersion && noted === records && records === rows) return;
  await bringAllForward(database, packing);
  await makeRows(database);
}

/**
 * Each record in a transaction of its own: looks are packed in between, and whoever is interrupted goes on at the next
 * opening. A record that another window has changed meanwhile is that window's.
 */
async function bringAllForward(database: WatchDatabase, packing: Packing): Promise<void> {
  for (const id of await olderIds(database)) {
    const raw = await database.get('cases', id);
    const brought = await bringForward(raw, packing);
    if (brought.state !== 'readable') continue;
    const transaction = database.transaction(['cases', 'looks', 'pictures'], 'readwrite', { durability: 'strict' });
    const present = await transaction.objectStore('cases').get(id);
    if (openRecord(present).state === 'older') {
      for (const look of brought.parts.looks) await transaction.objectStore('looks').put(look);
      for (const picture of brought.parts.pictures) await transaction.objectStore('pictures').put(picture);
      await transaction.objectStore('cases').put(brought.record);
    }
    await transaction.done;
  }
}

/** Told by their version alone: whether one is whole is seen when it is brought forward. */
async function olderIds(database: WatchDatabase): Promise<string[]> {
  const ids: string[] = [];
  let cursor = await database.transaction('cases').store.openCursor();
  while (cursor) {
    const { version = 0 } = cursor.value;
    if (typeof version === 'number' && version < recordVersion) ids.push(cursor.value.id);
    cursor = await cursor.continue();
  }
  return ids;
}

/** One record after the other, so that a large list does not stand in memory at once. */
async function makeRows(database: WatchDatabase): Promise<void> {
  const transaction = database.transaction(['cases', 'rows', 'meta'], 'readwrite');
  const store = transaction.objectStore('rows');
  const meta = transaction.objectStore('meta');
  let records = 0;
  let older = 0;
  await store.clear();
  let cursor = await transaction.objectStore('cases').openCursor();
  while (cursor) {
    await store.put(rowOf(cursor.value));
    records += 1;
    if (openRecord(cursor.value).state === 'older') older += 1;
    cursor = await cursor.continue();
  }
  await meta.put(rowsFormat, 'rowsFormat');
  await meta.put(records, 'records');
  // One that could not be brought forward today is tried again at the next opening.
  await meta.put(older === 0 ? recordVersion : recordVersion - 1, 'recordVersion');
  await transaction.done;
}

/** A record as this version reads it; a problem when there is none, or none that it can read. */
export function openStored(raw: unknown): Result<WatchRecord> {
  if (raw === undefined) return fail(missing);
  const opened = openRecord(raw);
  if (opened.state === 'readable') return succeed(opened.record);
  return fail(opened.state === 'older' ? notYet : opened.problem);
}

/** Nothing is written that could not be read again. */
function checkRecord(record: WatchRecord): Result<WatchRecord> {
  const parsed = watchRecordSchema.safeParse(record);
  if (parsed.success) return succeed(parsed.data);
  const placed = placeOfFault(parsed.error.issues);
  return fail(problem('record-refused', placed.place || 'record', placed));
}

const missing = problem('record-missing', 'watch list');
