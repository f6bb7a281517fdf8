import { type CaseHead, headOf } from '../case';
import type { Price } from '../listing/types';
import type { Problem } from '../problem';
import { listingKey } from './listing-key';
import { openRecord } from './migrations';
import type { WatchStatus } from './types';

/** Written beside the rows. It grows when a row holds something else or the rule of `listingKey` changes. */
export const rowsFormat = 1;

/**
 * What a list shows of one record; it holds no case, so that a list of thousands is read at once. A record that a newer
 * version wrote, or that cannot be read, is kept as it lies in the database, shown, exported, and never written.
 */
export type WatchRow = ReadableRow | UnreadableRow;

export interface ReadableRow {
  state: 'readable';
  id: string;
  /** By it the case of a listing is found again. */
  key: string;
  title: string;
  address: string;
  price: Price | null;
  /** The head of the case as far as a row shows it: its first line that has something to tell. */
  head: CaseHead;
  status: WatchStatus;
  hasNote: boolean;
  otherNotes: number;
  savedAt: string;
  changedAt: string;
  removedAt: string | null;
}

interface UnreadableRow {
  state: 'newer' | 'damaged';
  id: string;
  key: string;
  title: string;
  problem: Problem;
}

/** The row of a record as it lies in the database. */
export function rowOf(raw: unknown): WatchRow {
  const opened = openRecord(raw);
  if (opened.state !== 'readable') {
    const { id, title } = raw as { id?: unknown; title?: unknown };
    const named = typeof title === 'string' && title !== '' ? title.slice(0, 500) : 'A record without a title';
    return { state: opened.state, id: String(id), key: '', title: named, problem: opened.problem };
  }
  const { id, title, case: kase, status, note, otherNotes, savedAt, changedAt, removedAt } = opened.record;
  return {
    state: 'readable',
    id,
    key: listingKey(kase.listing.url),
    title,
    address: kase.listing.url,
    price: kase.listing.price[0]?.value ?? null,
    head: firstOf(headOf(kase)),
    status,
    hasNote: note !== '',
    otherNotes: otherNotes.length,
    savedAt,
    changedAt,
    removedAt,
  };
}

/** What speaks against a piece comes first; of a case that holds nothing, what was not looked at. */
function firstOf({ against, open, notLookedAt }: CaseHead): CaseHead {
  const isSilent = against.length === 0 && open.length === 0;
  return {
    against: against.slice(0, 1),
    open: against.length === 0 ? open.slice(0, 1) : [],
    notLookedAt: isSilent
      ? { ...notLookedAt, reasons: notLookedAt.reasons.slice(0, 1) }
      : { photos: [], failed: [], withoutFile: null, reasons: [] },
  };
}

const changeOf = (row: WatchRow) => (row.state === 'readable' ? row.changedAt : '');
/** The latest change first, then what cannot be read. */
export const latestFirst = (a: WatchRow, b: WatchRow): number => {
  const [left, right] = [changeOf(a), changeOf(b)];
  return left === right ? 0 : left < right ? 1 : -1;
};
