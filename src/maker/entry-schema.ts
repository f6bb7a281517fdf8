import * as z from 'zod';
import { strengthSchema } from '../source';
import { period } from '../span/types';

export const name = z.string().trim().min(1).max(120);
export const text = z.string().max(2000);
const source = text.min(1);
export const names = z.array(name).max(100);

/** One period, or several. */
export const periods = z.union([period, z.array(period).min(1).max(40)]);

export const standingKinds = ['disputed', 'withdrawn'] as const;

/**
 * Whether an entry still stands. `disputed`: sources differ, and nothing that rests on it is without exception.
 * `withdrawn`: taken back; it is kept and shown, and no listing is read by it.
 */
export const standingSchema = z.strictObject({
  is: z.enum(standingKinds),
  why: text.optional(),
  sources: z.array(source).max(20).optional(),
});

/** A case in which an entry does not hold: of these models, in these years, or as its words say. */
const exceptionSchema = z.strictObject({ what: text.min(1), models: names.optional(), used: periods.optional() });

/** What any entry may say of itself. */
export const entryFields = {
  /** Hard: a rule without exception; soft: a habit. Left out, it is what the list it stands in takes for usual. */
  strength: strengthSchema.optional(),
  sources: z.array(source).max(20).optional(),
  standing: standingSchema.optional(),
  exceptions: z.array(exceptionSchema).min(1).max(40).optional(),
  /** Words for the people who keep the file; nothing reads them. */
  note: text.optional(),
};
const entrySchema = z.strictObject(entryFields);
export type Entry = z.infer<typeof entrySchema>;

/** Which pieces an entry is of: only these models, only these years; left out, all. */
export const ofPieces = { models: names.optional(), used: periods.optional() };
