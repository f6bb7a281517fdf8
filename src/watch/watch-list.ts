import type { Case } from '../case/types';
import { fail, type Problem, type Result, succeed } from '../problem';
import { openDatabase, type StoredRecord } from './database';
import { listingKey } from './listing-key';
import { openRecord } from './migrations';
import { type Imported, readExport, writeExport } from './transfer';
import {
  type GenerationCounter,
  type KeptPicture,
  recordVersion,
  type WatchRecord,
  type WatchRow,
  type WatchStatus,
  watchRecordSchema,
} from './types';

/** A deleted record can be put back for this long. */
const binDays = 30;

export interface WatchPorts {
  counter: GenerationCounter;
  /** ISO date and time. */
  now(): string;
  newId(): string;
}

/** Opens the watch list. Every method answers with a value; nothing throws. */
export async function openWatchList(ports: WatchPorts) {
  let lost = false;
  const opened = await openDatabase(() => {
    lost = true;
  });
  if (!opened.ok) return opened;
  const database = opened.value;

  const attempt = async <T>(work: () => Promise<Result<T>>): Promise<Result<T>> => {
    if (lost) return fail(closed);
    try {
      return await work();
    } catch (error) {
      return fail(storeProblem(error));
    }
  };

  /** One user action: one transaction, on the disk before it counts as done. */
  const change = <T>(work: (cases: CaseStore) => Promise<Result<T>>): Promise<Result<T>> =>
    attempt(async () => {
      const transaction = database.transaction(['cases', 'meta'], 'readwrite', { durability: 'strict' });
      const meta = transaction.objectStore('meta');
      const result = await work(transaction.objectStore('cases') as unknown as CaseStore).catch((error: unknown) => {
        transaction.abort();
        transaction.done.catch(() => undefined);
        throw error;
      });
      const generation = ((await meta.get('generation')) ?? 0) + (result.ok ? 1 : 0);
      if (result.ok) await meta.put(generation, 'generation');
      await transaction.done;
      if (result.ok) await ports.counter.write(generation);
      return result;
    });

  const edit = (id: string, edited: (record: WatchRecord) => WatchRecord) =>
    change(async (cases) => {
      const found = openRecord(await cases.get(id));
      if (found.state !== 'readable') return fail(found.problem);
      return put(cases, { ...edited(found.record), changedAt: ports.now() });
    });

  return succeed({
    /** Every record, newest change first, with what cannot be read shown as it is. */
    rows: () => attempt(async () => succeed((await database.getAll('cases')).map(toRow).sort(newestFirst))),

    /** The saved case of a listing's address, newest first; null when there is none. */
    findByUrl: (url: string) =>
      attempt<WatchRecord | null>(async () => {
        const raw = await database.getAllFromIndex('cases', 'byKey', listingKey(url));
        const records = raw.map(toRow).flatMap((row) => (row.state === 'readable' ? [row.record] : []));
        const present = records.filter(({ removedAt }) => removedAt === null);
        return succeed(present.sort((a, b) => b.changedAt.localeCompare(a.changedAt))[0] ?? null);
      }),

    /** Saves a case: a new record, or the present state of the record that the listing already has. */
    save: (saved: Case, pictures: KeptPicture[]) =>
      change(async (cases) => {
        const key = listingKey(saved.listing.url);
        const present = (await cases.index('byKey').getAll(key)).map(toRow).flatMap((row) => {
          return row.state === 'readable' && row.record.removedAt === null ? [row.record] : [];
        })[0];
        const now = ports.now();
        const title = (saved.listing.title[0]?.value ?? saved.listing.url).slice(0, 500);
        const content = { key, title, case: saved, pictures, changedAt: now };
        const begun = { id: ports.newId(), savedAt: now, status: 'watching' as const, note: '', removedAt: null };
        return put(cases, { version: recordVersion, ...(present ?? begun), ...content });
      }),

    setNote: (id: string, note: string) => edit(id, (record) => ({ ...record, note })),
    setStatus: (id: string, status: WatchStatus) => edit(id, (record) => ({ ...record, status })),
    remove: (id: string) => edit(id, (record) => ({ ...record, removedAt: ports.now() })),
    restore: (id: string) => edit(id, (record) => ({ ...record, removedAt: null })),

    /** Ends records that were deleted more than 30 days ago. */
    emptyBin: () =>
      change(async (cases) => {
        const limit = new Date(Date.parse(ports.now()) - binDays * 86_400_000).toISOString();
        for (const row of (await cases.getAll()).map(toRow)) {
          if (row.state !== 'readable' || row.record.removedAt === null) continue;
          if (row.record.removedAt < limit) await cases.delete(row.record.id);
        }
        return succeed(null);
      }),

    /** The whole list as the text of a file, unreadable records included. */
    exportText: () => attempt(async () => succeed(writeExport(await database.getAll('cases'), ports.now()))),

    /** Takes in an exported file, all in one transaction. Of one record in both places the later change stays. */
    importText: (text: string): Promise<Result<Imported>> => {
      const read = readExport(text);
      if (!read.ok) return Promise.resolve(read);
      return change(async (cases) => {
        const counts = { added: 0, renewed: 0, kept: 0, refused: read.value.refused };
        for (const record of read.value.records) {
          const raw = await cases.get(record.id);
          const present = raw === undefined ? null : openRecord(raw);
          const mayReplace =
            present === null || (present.state === 'readable' && present.record.changedAt < record.changedAt);
          if (mayReplace) await cases.put(record);
          counts[present === null ? 'added' : mayReplace ? 'renewed' : 'kept']++;
        }
        return succeed(counts);
      });
    },

    /** Whether the list is empty although cases were once saved: the browser has removed the data. */
    isWiped: () =>
      attempt(async () => {
        const generation = (await database.get('meta', 'generation')) ?? 0;
        return succeed(generation === 0 && (await ports.counter.read()) > 0);
      }),
    /** The user knows: start anew. */
    acceptWipe: () => ports.counter.write(0),
    close: () => database.close(),
  });
}
export type WatchList = Extract<Awaited<ReturnType<typeof openWatchList>>, { ok: true }>['value'];

/** What a change needs of the store; its own type, because the browser's types are no part of the core. */
interface CaseStore {
  get(id: string): Promise<unknown>;
  getAll(): Promise<unknown[]>;
  put(record: StoredRecord): Promise<unknown>;
  delete(id: string): Promise<void>;
  index(name: 'byKey'): { getAll(key: string): Promise<unknown[]> };
}

/** Nothing is written that could not be read again. */
async function put(cases: CaseStore, record: WatchRecord): Promise<Result<WatchRecord>> {
  const parsed = watchRecordSchema.safeParse(record);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return fail({
      code: 'record-refused',
      where: issue?.path.join('.') ?? 'record',
      what: `it cannot be saved: ${issue?.message ?? 'not the agreed shape'}`,
      remedy: 'Nothing was changed. Shorten the note, or read the page again.',
    });
  }
  await cases.put(parsed.data);
  return succeed(parsed.data);
}

function toRow(raw: unknown): WatchRow {
  const opened = openRecord(raw);
  if (opened.state === 'readable') return opened;
  const { id = '?', title } = raw as { id?: string; title?: unknown };
  return { ...opened, id, title: typeof title === 'string' ? title : 'record', raw };
}

const changeOf = (row: WatchRow) => (row.state === 'readable' ? row.record.changedAt : '');
const newestFirst = (a: WatchRow, b: WatchRow) => changeOf(b).localeCompare(changeOf(a));

const closed: Problem = {
  code: 'watch-list-closed',
  where: 'watch list',
  what: 'the watch list was closed by the browser',
  remedy: 'Reload this page.',
};

function storeProblem(error: unknown): Problem {
  const full = (error as { name?: string } | null)?.name === 'QuotaExceededError';
  return {
    code: full ? 'disk-full' : 'watch-list-failed',
    where: 'watch list',
    what: full ? 'the disk is full' : 'the browser did not carry out the change',
    remedy: full ? 'Free some space and save again. Nothing was changed.' : 'Nothing was changed. Try again.',
  };
}
