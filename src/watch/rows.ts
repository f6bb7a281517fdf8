import * as z from 'zod';
import { priceSchema, webAddressSchema } from '../listing/types';
import { problemSchema } from '../problem';
import { listingKey } from './listing-key';
import { openRecord } from './migrations';
import { momentSchema, statusSchema } from './types';

/** Written beside the rows. It grows when a row holds something else or the rule of `listingKey` changes. */
export const rowsFormat = 1;

const readableRowSchema = z.strictObject({
  state: z.literal('readable'),
  id: z.string(),
  /** By it the case of a listing is found again. */
  key: z.string(),
  title: z.string(),
  address: webAddressSchema,
  price: priceSchema.nullable(),
  counts: z.strictObject({ contradictions: z.number(), doubts: z.number(), gaps: z.number() }),
  status: statusSchema,
  hasNote: z.boolean(),
  otherNotes: z.number(),
  savedAt: momentSchema,
  changedAt: momentSchema,
  removedAt: momentSchema.nullable(),
});

const unreadableRowSchema = z.strictObject({
  state: z.enum(['newer', 'damaged']),
  id: z.string(),
  key: z.string(),
  title: z.string(),
  problem: problemSchema,
});

/**
 * What a list shows of one record; it holds no case, so that a list of thousands is read at once. A record that a newer
 * version wrote, or that cannot be read, is kept as it lies in the database, shown, exported, and never written.
 */
export const rowSchema = z.discriminatedUnion('state', [readableRowSchema, unreadableRowSchema]);
export type WatchRow = z.infer<typeof rowSchema>;
export type ReadableRow = z.infer<typeof readableRowSchema>;

/** The row of a record as it lies in the database. */
export function rowOf(raw: unknown): WatchRow {
  const opened = openRecord(raw);
  if (opened.state !== 'readable') {
    const { id, title } = raw as { id?: unknown; title?: unknown };
    const named = typeof title === 'string' && title !== '' ? title.slice(0, 500) : 'A record without a title';
    return { state: opened.state, id: String(id), key: '', title: named, problem: opened.problem };
  }
  const { id, title, case: kase, status, note, otherNotes, savedAt, changedAt, removedAt } = opened.record;
  const { contradictions, doubts, gaps } = kase.summary;
  return {
    state: 'readable',
    id,
    key: listingKey(kase.listing.url),
    title,
    address: kase.listing.url,
    price: kase.listing.price[0]?.value ?? null,
    counts: { contradictions, doubts, gaps },
    status,
    hasNote: note !== '',
    otherNotes: otherNotes.length,
    savedAt,
    changedAt,
    removedAt,
  };
}

const changeOf = (row: WatchRow) => (row.state === 'readable' ? row.changedAt : '');
/** The latest change first, then what cannot be read. */
export const latestFirst = (a: WatchRow, b: WatchRow): number => {
  const [left, right] = [changeOf(a), changeOf(b)];
  return left === right ? 0 : left < right ? 1 : -1;
};
