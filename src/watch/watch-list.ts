import type { Case } from '../case/types';
import { fail, type Problem, type Result, succeed } from '../problem';
import { openDatabase } from './database';
import { addLook, joinRecords, settleOtherNote, titleOf, withNote } from './join';
import { listingKey } from './listing-key';
import { type Loss, type Mark, markAfterChange, markAfterLoss, markAtOpening, readMark } from './loss';
import type { ReadableRow, WatchRow } from './rows';
import { type Action, type Change, carryOut, holdRows, openStored, readInside, readRows } from './store';
import { readExport, takeIn, writeExport } from './transfer';
import {
  type Imported,
  type KeptPicture,
  keptPictureSchema,
  type OtherNote,
  recordVersion,
  type WatchRecord,
  type WatchStatus,
} from './types';

/** A deleted record can be put back for this long. */
const binDays = 30;

export interface WatchPorts {
  /**
   * Changes the mark that stands outside the database, from what was stored to what is returned. Changes run one after
   * the other, whichever window asks for them.
   */
  changeMark(change: (stored: unknown) => Promise<Mark>): Promise<Mark>;
  /** ISO date and time. */
  now(): string;
  newId(): string;
}

/** A note as it was saved; `bothNotes` when another window had changed it meanwhile, whose words are kept beside. */
export interface SavedNote {
  record: WatchRecord;
  bothNotes: boolean;
}

/** Opens the watch list. Every method answers with a value; nothing throws. */
export async function openWatchList(ports: WatchPorts, onChange: (change: Change) => void = () => undefined) {
  let lost = false;
  const opened = await openDatabase(ports.newId, () => {
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

  // Before anything is changed: a change would make an older copy look like the present one.
  const prepared = await attempt(async () => {
    await holdRows(database);
    const mark = await ports.changeMark(async (stored) =>
      markAtOpening(await readInside(database), readMark(stored), ports.now()),
    );
    return succeed(mark.loss);
  });
  if (!prepared.ok) {
    database.close();
    return prepared;
  }
  let loss: Loss | null = prepared.value;

  const change = <T>(work: (action: Action) => Promise<Result<T>>): Promise<Result<T>> =>
    attempt(async () => {
      const outcome = await carryOut(database, work);
      if (!outcome.done) return fail(outcome.problem);
      onChange(outcome.change);
      // The change is on the disk. A mark that cannot be raised now is raised by the next opening.
      await ports
        .changeMark(async (stored) => markAfterChange(outcome.inside, readMark(stored)))
        .catch(() => undefined);
      return succeed(outcome.value);
    });

  const edit = (id: string, edited: (record: WatchRecord, now: string) => WatchRecord) =>
    change(async (action) => {
      const found = await action.open(id);
      if (!found.ok) return found;
      const now = ports.now();
      return action.put({ ...edited(found.value, now), changedAt: now });
    });

  return succeed({
    /** What the list shows of every record, the latest change first. */
    rows: () => attempt<WatchRow[]>(async () => succeed(await readRows(database))),

    get: (id: string) => attempt(async () => openStored(await database.get('cases', id))),

    /** The small first photo of a record, null when none was kept. The rest of the record is not looked at. */
    face: (id: string) =>
      attempt<string | null>(async () => {
        const raw = (await database.get('cases', id)) as { pictures?: unknown } | undefined;
        const kept: unknown[] = Array.isArray(raw?.pictures) ? raw.pictures : [];
        const first = kept.find((one) => (one as KeptPicture | null)?.lineId === null);
        const picture = keptPictureSchema.safeParse(first);
        return succeed(picture.success ? picture.data.picture : null);
      }),

    /** The saved case of a listing's address, the latest change first; null when there is none. */
    findByUrl: (url: string) =>
      attempt<WatchRecord | null>(async () => {
        const rows = await database.getAllFromIndex('rows', 'byKey', listingKey(url));
        const row = latestOf(rows, false);
        return row === null ? succeed(null) : openStored(await database.get('cases', row.id));
      }),

    /**
     * Saves a case: one more look of the record that the listing has already, else a new record. A record in the bin
     * comes back for it: otherwise undoing the deletion would give two cases of one listing.
     */
    save: (saved: Case, pictures: KeptPicture[]) =>
      change(async (action) => {
        const now = ports.now();
        const look = { case: saved, pictures };
        const rows = await action.rowsOf(listingKey(saved.listing.url));
        const row = latestOf(rows, false) ?? latestOf(rows, true);
        if (row) {
          const present = await action.open(row.id);
          if (!present.ok) return present;
          return action.put({ ...addLook(present.value, look), removedAt: null, changedAt: now });
        }
        return action.put({
          version: recordVersion,
          id: ports.newId(),
          title: titleOf(saved),
          savedAt: now,
          changedAt: now,
          status: 'watching',
          note: '',
          otherNotes: [],
          ...look,
          earlier: [],
          removedAt: null,
        });
      }),

    /** Saves a note that began as `begunWith`. What another window wrote in between is kept beside it. */
    setNote: (id: string, note: string, begunWith: string) =>
      change<SavedNote>(async (action) => {
        const found = await action.open(id);
        if (!found.ok) return found;
        const { record, changed, bothNotes } = withNote(found.value, note, begunWith, ports.now());
        const put = changed ? await action.put(record) : succeed(record);
        return put.ok ? succeed({ record: put.value, bothNotes }) : put;
      }),
    /** Ends one of the other notes: `take` puts its words under the buyer's own and takes its status. */
    settleOtherNote: (id: string, other: OtherNote, take: boolean) =>
      edit(id, (record) => settleOtherNote(record, other, take)),
    setStatus: (id: string, status: WatchStatus) => edit(id, (record) => ({ ...record, status })),
    remove: (id: string) => edit(id, (record, now) => ({ ...record, removedAt: now })),

    /** Puts a deleted record back. A listing that was saved anew meanwhile stays one case, with what both hold. */
    restore: (id: string) =>
      change(async (action) => {
        const found = await action.open(id);
        if (!found.ok) return found;
        const now = ports.now();
        const restored = { ...found.value, removedAt: null, changedAt: now };
        const rows = await action.rowsOf(listingKey(found.value.case.listing.url));
        const row = latestOf(
          rows.filter((one) => one.id !== id),
          false,
        );
        const present = row ? await action.open(row.id) : null;
        if (!present?.ok) return action.put(restored);
        await action.drop(id);
        return action.put(joinRecords(present.value, restored, 'bin', now).record);
      }),

    /** Ends records that were deleted more than 30 days ago; none while a loss is open, for any record may be missed. */
    emptyBin: () =>
      change(async (action) => {
        if (loss !== null) return succeed(null);
        const limit = new Date(Date.parse(ports.now()) - binDays * 86_400_000).toISOString();
        for (const row of await action.removedRows()) {
          if (row.state === 'readable' && row.removedAt !== null && row.removedAt < limit) await action.drop(row.id);
        }
        return succeed(null);
      }),

    /** The whole list as the text of a file, unreadable records included. */
    exportText: () => attempt(async () => succeed(writeExport(await database.getAll('cases'), ports.now()))),

    /** Takes in an exported file, all in one transaction. */
    importText: (text: string): Promise<Result<Imported>> => {
      const read = readExport(text);
      if (!read.ok) return Promise.resolve(read);
      return change(async (action) => succeed(await takeIn(action, read.value, ports)));
    },

    /** What the browser has lost since the list was last changed, until the user takes note of it. */
    loss: () => loss,
    takeNoteOfLoss: () =>
      attempt(async () => {
        await ports.changeMark(async () => markAfterLoss(await readInside(database)));
        loss = null;
        return succeed(null);
      }),
    close: () => database.close(),
  });
}
export type WatchList = Extract<Awaited<ReturnType<typeof openWatchList>>, { ok: true }>['value'];

/** Of a listing's rows the one that was changed last, among those in the bin or those outside it. */
function latestOf(rows: WatchRow[], inBin: boolean): ReadableRow | null {
  const fitting = rows.flatMap((row) => (row.state === 'readable' && (row.removedAt !== null) === inBin ? [row] : []));
  return fitting.sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1))[0] ?? null;
}

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
