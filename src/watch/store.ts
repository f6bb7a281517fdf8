import { fail, type Problem, type Result, succeed } from '../problem';
import type { StoredRecord, WatchDatabase } from './database';
import type { Inside } from './loss';
import { openRecord } from './migrations';
import { latestFirst, rowOf, rowsFormat, type WatchRow } from './rows';
import { type WatchRecord, watchRecordSchema } from './types';

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
  put(record: WatchRecord): Promise<Result<WatchRecord>>;
  /** Takes in a record of a newer version as it is. */
  putNewer(raw: StoredRecord): Promise<void>;
  drop(id: string): Promise<void>;
}

export type Outcome<T> = { done: true; value: T; change: Change; inside: Inside } | { done: false; problem: Problem };

/** One user action: one transaction, on the disk before it counts as done. One that fails changes nothing. */
export async function carryOut<T>(
  database: WatchDatabase,
  work: (action: Action) => Promise<Result<T>>,
): Promise<Outcome<T>> {
  const transaction = database.transaction(['cases', 'rows', 'meta'], 'readwrite', { durability: 'strict' });
  const cases = transaction.objectStore('cases');
  const rows = transaction.objectStore('rows');
  const meta = transaction.objectStore('meta');
  const written = new Map<string, WatchRow>();
  const gone: string[] = [];
  let added = 0;
  const write = async (raw: StoredRecord) => {
    const row = rowOf(raw);
    if ((await rows.getKey(row.id)) === undefined) added += 1;
    await cases.put(raw);
    await rows.put(row);
    written.set(row.id, row);
  };
  const action: Action = {
    raw: (id) => cases.get(id),
    open: async (id) => openStored(await cases.get(id)),
    removedRows: () => rows.index('byRemoval').getAll(),
    rowsOf: (key) => rows.index('byKey').getAll(key),
    async put(record) {
      const checked = checkRecord(record);
      if (checked.ok) await write(checked.value);
      return checked;
    },
    putNewer: write,
    async drop(id) {
      await cases.delete(id);
      await rows.delete(id);
      added -= 1;
      written.delete(id);
      gone.push(id);
    },
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
 * not: after a change of what rows hold, and after records were lost. Afterwards each change keeps them so.
 */
export async function holdRows(database: WatchDatabase): Promise<void> {
  const transaction = database.transaction(['cases', 'rows', 'meta'], 'readonly');
  const [format, noted, records, rows] = await Promise.all([
    transaction.objectStore('meta').get('rowsFormat'),
    transaction.objectStore('meta').get('records'),
    transaction.objectStore('cases').index('byId').count(),
    transaction.objectStore('rows').count(),
  ]);
  if (format !== rowsFormat || noted !== records || records !== rows) await makeRows(database);
}

/** One record after the other, so that a large list does not stand in memory at once. */
async function makeRows(database: WatchDatabase): Promise<void> {
  const transaction = database.transaction(['cases', 'rows', 'meta'], 'readwrite');
  const store = transaction.objectStore('rows');
  let records = 0;
  await store.clear();
  let cursor = await transaction.objectStore('cases').openCursor();
  while (cursor) {
    await store.put(rowOf(cursor.value));
    records += 1;
    cursor = await cursor.continue();
  }
  await transaction.objectStore('meta').put(rowsFormat, 'rowsFormat');
  await transaction.objectStore('meta').put(records, 'records');
  await transaction.done;
}

/** A record as this version reads it; a problem when there is none, or none that it can read. */
export function openStored(raw: unknown): Result<WatchRecord> {
  if (raw === undefined) return fail(missing);
  const opened = openRecord(raw);
  return opened.state === 'readable' ? succeed(opened.record) : fail(opened.problem);
}

/** Nothing is written that could not be read again. */
function checkRecord(record: WatchRecord): Result<WatchRecord> {
  const parsed = watchRecordSchema.safeParse(record);
  if (parsed.success) return succeed(parsed.data);
  const issue = parsed.error.issues[0];
  return fail({
    code: 'record-refused',
    where: issue?.path.join('.') || 'record',
    what: `it cannot be saved: ${issue?.message ?? 'not the agreed shape'}`,
    remedy: 'Nothing was changed. Shorten the note, or read the page again.',
  });
}

const missing: Problem = {
  code: 'record-missing',
  where: 'watch list',
  what: 'the case is no longer in the watch list',
  remedy: 'It was deleted, perhaps in another window.',
};
