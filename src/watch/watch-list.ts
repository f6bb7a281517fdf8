import type { Case } from '../case';
import { fail, type Problem, problem, type Result, succeed } from '../problem';
import { whatCameLater, withBoth } from './both-looks';
import { openDatabase } from './database';
import { joinAsked, settleOtherNote, withNote } from './join';
import { judgingIn } from './judging-in';
import { findLettering, type KeptLettering } from './lettering';
import { type LikenessOfPicture, workOutLikenesses } from './likenesses';
import { emptyBin, latestOf, putBack, putCase } from './list-changes';
import { listingKey } from './listing-key';
import { addressOf } from './look';
import { type Loss, markAfterChange, markAfterLoss, markAtOpening, readMark } from './loss';
import { partsIn } from './parts-by-name';
import type { WatchPorts } from './ports';
import { type EarlierLook, readEarlier, readFile, readSaved } from './read-saved';
import { withReply } from './reply';
import type { WatchRow } from './rows';
import { findSamePhotos, type SamePhotoElsewhere } from './same-photos';
import { latestLookOf, type SavedCase } from './saved-case';
import { type BroughtPhoto, withoutSent, withSent } from './sent';
import { removedOf } from './sent-changes';
import { type Action, type Change, carryOut, holdRows, openStored, readInside, readRows } from './store';
import { filesOfExport, readExport, takeIn, writeExport } from './transfer';
import type {
  DatedOtherwise,
  FileContent,
  Imported,
  KeptFile,
  KeptPicture,
  OtherNote,
  WatchRecord,
  WatchStatus,
} from './types';

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
    await holdRows(database, ports.packing);
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

  const judgedAnew = judgingIn(database, ports, { attempt, change });

  return succeed({
    /** What the list shows of every record, the latest change first. */
    rows: () => attempt<WatchRow[]>(async () => succeed(await readRows(database))),

    /** A record with its looks and their pictures. */
    get: (id: string) => attempt<SavedCase>(() => readSaved(database, id, ports)),

    /** The small first photo of a record, null when none was kept. The record itself is not looked at. */
    face: (id: string) =>
      attempt<string | null>(async () => {
        const row = await database.get('rows', id);
        const face = row?.state === 'readable' ? row.face : null;
        return succeed(face === null ? null : addressOf(await database.get('pictures', face), ports.packing));
      }),

    /** A photo that is kept whole, by the name that its look has for it; null where there is none. */
    file: (name: string) => attempt<FileContent | null>(async () => succeed(await readFile(partsIn(database), name))),

    /** Lines of characters that were measured in other cases than that of a listing, by its key. */
    lettering: (except: string) =>
      attempt<KeptLettering[]>(async () => succeed(await findLettering(database, ports.packing, except))),

    /** The photos of a case that other cases have too. */
    samePhotos: (id: string) =>
      attempt<SamePhotoElsewhere[]>(async () => succeed(await findSamePhotos(database, id, ports.packing))),

    /**
     * Works out by what photos are known again that were kept before this was written down, of the pictures kept of them;
     * how many. Asked for once the list stands: it takes as long as there are such photos.
     */
    workOutLikenesses: (likenessOf: LikenessOfPicture) =>
      attempt<number>(async () => succeed(await workOutLikenesses(database, ports.packing, likenessOf))),

    /** The saved record of a listing's address, the latest change first; null when there is none. */
    findByUrl: (url: string) =>
      attempt<WatchRecord | null>(async () => {
        const rows = await database.getAllFromIndex('rows', 'byKey', listingKey(url));
        const row = latestOf(rows, false);
        return row === null ? succeed(null) : openStored(await database.get('cases', row.id));
      }),

    /** What the latest saved look at a listing gives the next one: what it compares with, and what the buyer set right. */
    earlier: (url: string) =>
      attempt<EarlierLook | null>(async () => {
        const row = latestOf(await database.getAllFromIndex('rows', 'byKey', listingKey(url)), false);
        return row === null ? succeed(null) : readEarlier(database, row.id, ports);
      }),

    /**
     * Saves a case: one more look of the record that the listing has already, in the bin too, else a new record.
     * `removed`: photos that came another way than by the page and were taken out of it.
     */
    save: async (
      saved: Case,
      pictures: KeptPicture[],
      files: readonly KeptFile[] = [],
      removed: readonly string[] = [],
    ) => {
      const prepared = await attempt(async () => {
        const makers = await ports.makers(saved.listing.url);
        return latestLookOf(saved, pictures, { rules: ports.rules, makers }, ports.packing, files);
      });
      if (!prepared.ok) return prepared;
      const { latest, parts } = prepared.value;
      return change((action) => putCase(action, saved, latest, parts, ports, removed));
    },

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
    /** Notes that these questions were put into a message now. */
    setAsked: (id: string, questions: readonly string[]) =>
      edit(id, (record, at) => ({
        ...record,
        asked: joinAsked(
          record.asked,
          questions.map((question) => ({ id: question, at })),
        ),
      })),

    /** Keeps what the seller replied in the latest look, whose case is judged with it from now on. */
    addReply: (id: string, text: string) => judgedAnew(id, (saved, anew) => withReply(saved, text, anew)),
    /** Keeps photos that came another way than by the page in the latest look. */
    addSent: (id: string, brought: readonly BroughtPhoto[]) =>
      judgedAnew(id, (saved, anew) => withSent(saved, brought, anew), {
        brought: brought.map(({ photo }) => photo.id),
      }),
    removeSent: (id: string, photoId: string) =>
      judgedAnew(id, (saved, anew) => withoutSent(saved, photoId, anew), { removed: [photoId] }),
    /** Says when the piece was made, where something else than its code settles it; null takes that back. */
    setDated: (id: string, dated: Omit<DatedOtherwise, 'at'> | null) =>
      edit(id, (record, at) => ({ ...record, dated: dated && { ...dated, at } })),
    setStatus: (id: string, status: WatchStatus) => edit(id, (record) => ({ ...record, status })),
    remove: (id: string) => edit(id, (record, now) => ({ ...record, removedAt: now })),

    /** Puts a deleted record back. A listing that was saved anew meanwhile stays one case, with what both hold. */
    restore: async (id: string) => {
      const restored = await change((action) => putBack(action, id, ports.now()));
      if (!restored.ok || removedOf(restored.value.sentChanges).size === 0) return restored;
      const both = await judgedAnew(restored.value.id, (saved, anew) => withBoth(saved, [], anew));
      return both.ok ? both : restored;
    },

    /** Ends records that were deleted more than 30 days ago; none while a loss is open, for any record may be missed. */
    emptyBin: () => change<null>(async (action) => (loss === null ? emptyBin(action, ports.now()) : succeed(null))),

    /** How many files an export takes, and how many of the photos that are kept whole are not in the first. */
    exportFiles: () => attempt(async () => succeed(await filesOfExport(database))),

    /**
     * One of the files of an export as text. The first has the whole list, unreadable records included; the others the
     * photos that it has no room for.
     */
    exportText: (file = 0) =>
      attempt(async () => succeed(await writeExport(database, ports.packing, { file, now: ports.now() }))),

    /** Takes in an exported file, all in one transaction. */
    importText: async (text: string): Promise<Result<Imported>> => {
      const read = await attempt(() => readExport(text, ports.packing));
      if (!read.ok) return read;
      const sides = await attempt(async () => succeed(await whatCameLater(database, read.value, ports.packing)));
      if (!sides.ok) return sides;
      const taken = await change(async (action) => succeed(await takeIn(action, read.value, ports)));
      if (taken.ok)
        for (const [id, both] of sides.value) await judgedAnew(id, (saved, anew) => withBoth(saved, both, anew));
      return taken;
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

const closed = problem('watch-list-closed', 'watch list');

const storeProblem = (error: unknown): Problem =>
  problem(
    (error as { name?: string } | null)?.name === 'QuotaExceededError' ? 'disk-full' : 'watch-list-failed',
    'watch list',
  );
