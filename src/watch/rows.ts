import type { Price } from '../listing/types';
import { type Problem, problem } from '../problem';
import { listingKey } from './listing-key';
import { openRecord } from './migrations';
import type { WatchRecord, WatchStatus } from './types';

/** Written beside the rows. It grows when a row holds something else or the rule of `listingKey` changes. */
export const rowsFormat = 4;

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
  /** Name of the small picture of the first photo. */
  face: string | null;
  /** The head of the case as far as a row shows it: its first line that has something to tell, as it was judged then. */
  head: WatchRecord['shown']['head'];
  status: WatchStatus;
  hasNote: boolean;
  otherNotes: number;
  /** The date of the piece that is settled otherwise than by its code, with the code. */
  dated: WatchRecord['dated'];
  savedAt: string;
  changedAt: string;
  removedAt: string | null;
  /** Names of the looks and pictures that the record needs. */
  uses: string[];
}

interface UnreadableRow {
  state: 'newer' | 'damaged';
  id: string;
  key: string;
  title: string;
  problem: Problem;
  uses: string[];
}

/** The row of a record as it lies in the database. */
export function rowOf(raw: unknown): WatchRow {
  const opened = openRecord(raw);
  const uses = [...namesIn(raw)];
  if (opened.state !== 'readable') {
    const { id, title } = raw as { id?: unknown; title?: unknown };
    const named = typeof title === 'string' && title !== '' ? title.slice(0, 500) : '';
    const { state, problem } = opened.state === 'older' ? { state: 'damaged' as const, problem: notYet } : opened;
    return { state, id: String(id), key: '', title: named, problem, uses };
  }
  const { id, title, shown, status, note, otherNotes, dated, savedAt, changedAt, removedAt } = opened.record;
  return {
    state: 'readable',
    id,
    key: listingKey(shown.address),
    title,
    ...shown,
    status,
    hasNote: note !== '',
    otherNotes: otherNotes.length,
    dated,
    savedAt,
    changedAt,
    removedAt,
    uses,
  };
}

/**
 * Everything in a record that may be the name of a look or a picture, wherever it stands: what a newer version needs must
 * not be thrown away by one that does not know where it says so.
 */
export function namesIn(value: unknown, found = new Set<string>()): Set<string> {
  if (typeof value === 'string') {
    if (value.length === 64 && /^[0-9a-f]+$/.test(value)) found.add(value);
  } else if (typeof value === 'object' && value !== null) for (const one of Object.values(value)) namesIn(one, found);
  return found;
}

/** A record of an older build that was put in after the list was opened: the next opening brings it forward. */
export const notYet = problem('record-older', 'watch list');

const changeOf = (row: WatchRow) => (row.state === 'readable' ? row.changedAt : '');
/** The latest change first, then what cannot be read. */
export const latestFirst = (a: WatchRow, b: WatchRow): number => {
  const [left, right] = [changeOf(a), changeOf(b)];
  return Number(left < right) - Number(left > right);
};
