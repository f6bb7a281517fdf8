import * as z from 'zod';
import { caseSchema } from '../case/types';
import type { Problem } from '../problem';

/** What the buyer did about a case. */
export const statusSchema = z.enum(['watching', 'asked', 'answered', 'bought', 'passed']);
export type WatchStatus = z.infer<typeof statusSchema>;

/** A small picture kept with the case, as a data address. `lineId` is null for a whole photo. */
export const keptPictureSchema = z.strictObject({
  photoId: z.string(),
  lineId: z.string().nullable(),
  picture: z.string().startsWith('data:image/').max(400_000),
});
export type KeptPicture = z.infer<typeof keptPictureSchema>;

/** The record version that this program writes. The structure of the database has a number of its own. */
export const recordVersion = 1;

export const watchRecordSchema = z.strictObject({
  version: z.literal(recordVersion),
  /** Made once, never reused. */
  id: z.string().min(1).max(80),
  /** The listing's address without what only tracks the visitor: the same piece is found again by it. */
  key: z.string(),
  title: z.string().max(500),
  savedAt: z.string(),
  changedAt: z.string(),
  status: statusSchema,
  note: z.string().max(20_000),
  case: caseSchema,
  pictures: z.array(keptPictureSchema).max(60),
  /** Deleted records wait here for 30 days, so that a deletion can be undone. */
  removedAt: z.string().nullable(),
});
export type WatchRecord = z.infer<typeof watchRecordSchema>;

/**
 * One row of the list. A record that a newer version wrote, or that cannot be read, is kept as it lies in the
 * database, shown, exported, and never written.
 */
export type WatchRow =
  | { state: 'readable'; record: WatchRecord }
  | { state: 'newer' | 'damaged'; id: string; title: string; raw: unknown; problem: Problem };

/** A number outside the database that grows with each change: an empty database beside it was wiped. */
export interface GenerationCounter {
  read(): Promise<number>;
  write(generation: number): Promise<void>;
}
