import * as z from 'zod';
import { spanSchema } from '../span/types';
import { besideSchema } from './beside-types';
import { expectedSchema } from './expected';
import { partTellsSchema, placeOfCodeSchema, readingReasonSchema } from './tells';

/** One slot of a layout as it was read: its name, its characters and what they say. */
export const readPartSchema = z.strictObject({
  slot: z.string(),
  text: z.string(),
  start: z.number().int(),
  end: z.number().int(),
  tells: partTellsSchema,
});

/** Which rule book a reading follows: a maker's system, or a family when the maker is unknown. */
export const systemNameSchema = z.strictObject({
  maker: z.string().nullable(),
  id: z.string(),
  /** Where the maker file has the system from; absent when it does not say. */
  source: z.string().optional(),
  /** Whether its maker file is invented, for demonstration: whoever shows the system says so. */
  invented: z.literal(true).optional(),
  /** What its maker file says of it is a habit, or disputed: nothing by it is without exception. */
  soft: z.literal(true).optional(),
});
export type SystemName = z.infer<typeof systemNameSchema>;

export const plantReadSchema = z.strictObject({
  code: z.string(),
  place: z.string(),
  used: z.array(spanSchema),
  /** Where the maker file has the plant from; absent when it does not say. */
  source: z.string().optional(),
  /** What the maker file says of it is a habit, or disputed. */
  soft: z.literal(true).optional(),
});

/** One way to read a code. Probabilities of all readings of one code sum to at most 1. */
export const readingSchema = z.strictObject({
  text: z.string(),
  probability: z.number().min(0).max(1),
  system: systemNameSchema,
  parts: z.array(readPartSchema),
  span: spanSchema.nullable(),
  /** ISO 3166 codes; empty when the code names no place. */
  places: z.array(z.string()),
  plant: plantReadSchema.nullable(),
  /** The system's own period of use. */
  systemUsed: spanSchema,
  /** Other times in which its maker file says that it was used by way of exception; absent where it names none. */
  systemExcepted: z.array(spanSchema).optional(),
  /** Why this text reads so. */
  reasons: z.array(readingReasonSchema),
});
export type Reading = z.infer<typeof readingSchema>;

/** A code that has a system's shape and an impossible value in one slot. */
export const misfitSchema = z.strictObject({
  text: z.string(),
  probability: z.number().min(0).max(1),
  system: systemNameSchema,
  slot: placeOfCodeSchema,
  value: z.string(),
  expected: expectedSchema,
});
export type Misfit = z.infer<typeof misfitSchema>;

/**
 * A valid code near one that fits nothing, and how likely a misreading explains it (0 to 1): the text as it was written
 * and not certain enough, a likely reading of the same stamp, or another code that differs in a character or two.
 */
export const nearestSchema = z.strictObject({
  text: z.string(),
  system: systemNameSchema,
  how: z.enum(['as-written', 'likely', 'differs']),
  likelihood: z.number().min(0).max(1),
  reading: readingSchema,
});
export type Nearest = z.infer<typeof nearestSchema>;

/** What a text with the look of a code may be as well: a number on a label, or a `row` of holes or stitches. */
export const otherNumberSchema = z.enum(['year', 'time', 'measure', 'row']);
export type OtherNumber = z.infer<typeof otherNumberSchema>;

/**
 * What of a code that was seen is left open: it `may-go-on` outside the photo; it reads as another text `upside-down`;
 * a character may be one of two that are `alike` (`place` from 0); it is `too-long` for a code that no system explains,
 * or as likely an `other-number`.
 */
export const leftOpenSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('may-go-on') }),
  z.strictObject({ kind: z.literal('upside-down'), text: z.string() }),
  z.strictObject({ kind: z.literal('too-long') }),
  z.strictObject({ kind: z.literal('other-number'), as: otherNumberSchema }),
  z.strictObject({ kind: z.literal('alike'), place: z.number().int().nonnegative(), may: z.array(z.string()) }),
]);
export type LeftOpen = z.infer<typeof leftOpenSchema>;

export const decodingSchema = z.strictObject({
  id: z.string(),
  code: z.string(),
  from: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('photo'), photoId: z.string(), lineId: z.string() }),
    z.strictObject({ kind: z.literal('claim'), claimId: z.string() }),
    z.strictObject({ kind: z.literal('typed') }),
  ]),
  /** Whether the characters themselves count as read (best text or best reading reached the acceptance level). */
  accepted: z.boolean(),
  readings: z.array(readingSchema),
  misfits: z.array(misfitSchema),
  nearest: z.array(nearestSchema),
  /** Absent where nothing is left open. */
  open: z.array(leftOpenSchema).optional(),
  /** Marks that stand beside the code and are none, as the maker's file explains them; absent where there are none. */
  beside: z.array(besideSchema).optional(),
});
export type Decoding = z.infer<typeof decodingSchema>;
