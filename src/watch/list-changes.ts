import type { Case } from '../case';
import { type Result, succeed } from '../problem';
import { addLook, joinRecords } from './join';
import { listingKey } from './listing-key';
import type { WatchPorts } from './ports';
import { latestFirst, type ReadableRow, type WatchRow } from './rows';
import { type SentNow, withChanges } from './sent-changes';
import type { Action } from './store';
import { type LookName, type Parts, recordVersion, type WatchRecord } from './types';

/** A deleted record can be put back for this long. */
const binDays = 30;

/** Of a listing's rows the one that was changed last, among those in the bin or those outside it. */
export function latestOf(rows: WatchRow[], inBin: boolean): ReadableRow | null {
  const fitting = rows.flatMap((row) => (row.state === 'readable' && (row.removedAt !== null) === inBin ? [row] : []));
  return fitting.sort(latestFirst)[0] ?? null;
}

/**
 * Puts a case in: one more look of the record that the listing has already, else a new record. A record in the bin comes
 * back for it: otherwise undoing the deletion would give two cases of one listing. `removed`: ids of photos that came another
 * way than by the page and were taken out of the case.
 */
export async function putCase(
  action: Action,
  saved: Case,
  latest: Pick<WatchRecord, 'title' | 'shown' | 'looks'>,
  parts: Parts,
  ports: Pick<WatchPorts, 'now' | 'newId'>,
  removed: readonly string[] = [],
): Promise<Result<WatchRecord>> {
  const now = ports.now();
  const rows = await action.rowsOf(listingKey(saved.listing.url));
  const row = latestOf(rows, false) ?? latestOf(rows, true);
  if (row) {
    const present = await action.open(row.id);
    if (!present.ok) return present;
    const looks = latest.looks.map((look) => withFilesOf(look, present.value, saved));
    const sentChanges = withChanges(present.value.sentChanges, changedNow(present.value, saved, removed), now);
    const record = { ...addLook(present.value, { ...latest, looks }), sentChanges, removedAt: null, changedAt: now };
    return action.put(record, parts);
  }
  const record: WatchRecord = {
    version: recordVersion,
    id: ports.newId(),
    savedAt: now,
    changedAt: now,
    status: 'watching',
    note: '',
    otherNotes: [],
    asked: [],
    dated: null,
    sentChanges: withChanges([], { brought: idsOf(saved) }, now),
    ...latest,
    removedAt: null,
  };
  return action.put(record, parts);
}

const idsOf = ({ sent = [] }: Case): string[] => sent.map(({ id }) => id);

/** What changes of a record's photos with a case: those that it does not know, or that were out, are brought. */
function changedNow({ sentChanges }: WatchRecord, saved: Case, removed: readonly string[]): SentNow {
  const there = new Set(sentChanges.flatMap(({ photoId, isRemoved }) => (isRemoved ? [] : [photoId])));
  return { brought: idsOf(saved).filter((id) => !there.has(id)), removed };
}

/** A look with the files that earlier looks of the record have of its photos: a photo that was sent is one photo for good. */
function withFilesOf(look: LookName, { looks }: WatchRecord, { sent = [] }: Case): LookName {
  const known = new Map(looks.toReversed().flatMap(({ files }) => files.map((one) => [one.photoId, one] as const)));
  for (const one of look.files) known.set(one.photoId, one);
  return { ...look, files: sent.flatMap(({ id }) => known.get(id) ?? []) };
}

/** Puts a deleted record back. A listing that was saved anew meanwhile stays one case, with what both hold. */
export async function putBack(action: Action, id: string, now: string): Promise<Result<WatchRecord>> {
  const found = await action.open(id);
  if (!found.ok) return found;
  const restored = { ...found.value, removedAt: null, changedAt: now };
  const rows = await action.rowsOf(listingKey(found.value.shown.address));
  const others = rows.filter((one) => one.id !== id);
  const row = latestOf(others, false);
  const present = row ? await action.open(row.id) : null;
  if (!present?.ok) return action.put(restored);
  // First the one that takes over its looks: what no record names any more ends.
  const joined = await action.put(joinRecords(present.value, restored, 'bin', now).record);
  if (joined.ok) await action.drop(id);
  return joined;
}

/** Ends records that were deleted too long ago. */
export async function emptyBin(action: Action, now: string): Promise<Result<null>> {
  const limit = new Date(Date.parse(now) - binDays * 86_400_000).toISOString();
  for (const row of await action.removedRows()) {
    if (row.state === 'readable' && row.removedAt !== null && row.removedAt < limit) await action.drop(row.id);
  }
  return succeed(null);
}
