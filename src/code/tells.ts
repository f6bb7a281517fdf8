import * as z from 'zod';
import { spanSchema } from '../span/types';

/** The place of a code that holds what cannot be. */
export const placeOfCodeSchema = z.enum([
  'year',
  'month',
  'week',
  'quarter',
  'day',
  'day of year',
  'plant',
  'serial',
  'check',
]);
export type PlaceOfCode = z.infer<typeof placeOfCodeSchema>;

/** What some characters of a code say; the words stand with the languages. */
export const partTellsSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('year'), year: z.number().int() }),
  /** 1 to 12. */
  z.strictObject({ kind: z.literal('month'), month: z.number().int() }),
  z.strictObject({ kind: z.enum(['quarter', 'week', 'day', 'day-of-year', 'serial']), number: z.number() }),
  /** Where the plant stands; null where no plant or no place is on file. */
  z.strictObject({ kind: z.literal('plant'), place: z.string().nullable() }),
  /** A check character, and it agrees; always there; not explained. */
  z.strictObject({ kind: z.enum(['check', 'fixed', 'any']) }),
]);
export type PartTells = z.infer<typeof partTellsSchema>;

/** Why a code reads so, step by step. */
export const readingReasonSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('part'), value: z.string(), tells: partTellsSchema }),
  /** The system's period gives the century or the decade. */
  z.strictObject({ kind: z.literal('century'), used: spanSchema }),
  z.strictObject({ kind: z.enum(['check-agrees', 'in-table', 'in-future']) }),
  z.strictObject({ kind: z.literal('system-not-in-use'), used: spanSchema }),
  z.strictObject({ kind: z.literal('plant-not-in-use'), used: z.array(spanSchema) }),
]);
export type ReadingReason = z.infer<typeof readingReasonSchema>;
