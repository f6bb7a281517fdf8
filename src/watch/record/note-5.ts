import * as z from 'zod';
import { moment1, otherNote1, status1 } from './forms-1';
import { seen4, shown4 } from './note-4';

/** What the buyer did about one listing, and the names of the looks at it. The looks themselves never change. */
export const note5 = z.strictObject({
  version: z.literal(5),
  id: z.string().min(1).max(80),
  title: z.string().max(500),
  savedAt: moment1,
  changedAt: moment1,
  status: status1,
  note: z.string().max(20_000),
  otherNotes: z.array(otherNote1).max(20),
  /** Questions that were asked, by their names, and when each was asked last. */
  asked: z.array(z.strictObject({ id: z.string().min(1).max(200), at: moment1 })).max(200),
  shown: shown4,
  /** Latest first. */
  looks: z.array(seen4).min(1).max(21),
  removedAt: moment1.nullable(),
});
