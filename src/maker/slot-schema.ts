import * as z from 'zod';
import { period } from './period-schema';

/**
 * The slots of a layout. There are no patterns and no expressions, only slots of bounded width: the time to read a
 * code is bounded by layouts times length whatever a file says.
 */
const letters = z.string().regex(/^[A-Z0-9]{1,36}$/, 'capital letters or digits');
const reversed = z.boolean().optional();
const two = z.union([z.literal(2), z.literal('tens'), z.literal('units')]);
/** One place of a code holds one UTF-16 unit, so signs beyond U+FFFF are not taken. */
const printable = z.string().regex(/^[^\p{C}\u{10000}-\u{10FFFF}]+$/u, 'characters that can be seen or a space');

export const slotSchemas = {
  /** Characters that always stand there (or, when optional, stand there all or not at all). */
  literal: z
    .strictObject({ literal: printable.max(20), optional: z.boolean().optional() })
    .describe('Characters that always stand there; optional: there all or not at all.'),
  /** Any one of the characters given, between two other slots. */
  separator: z
    .strictObject({ separator: printable.max(10), optional: z.boolean().optional() })
    .describe('Any one of these characters; never counted by a check character.'),
  /** A plant's code of so many characters. */
  plant: z
    .strictObject({ plant: z.number().int().min(1).max(6) })
    .describe('The code of a plant, so many characters long.'),
  year: z.union([
    z.strictObject({
      year: z.union([z.literal(4), z.literal(2), z.literal(1), z.literal('tens'), z.literal('units')]),
      reversed,
    }),
    /** One letter a year from `first` on, starting again after the last letter. Letters not listed were skipped. */
    z.strictObject({
      year: z.literal('cycle'),
      letters,
      first: z.number().int().min(1800).max(2200),
      /** Drawn inside a shape (circle, square, shield), written as brackets round the letter. */
      enclosed: z.boolean().optional(),
    }),
  ]),
  month: z.union([
    z.strictObject({ month: two, reversed }),
    /** `1-9OND`: 1 to 9, then O, N, D. `1-9`: one digit; October to December are written in another layout. */
    z.strictObject({ month: z.enum(['1-9OND', '1-9']) }),
    z.strictObject({ month: z.literal('letter'), letters: letters.length(12).optional() }),
  ]),
  /** `count` says which week is the first: ISO 8601's, or the first full week from Sunday to Saturday. */
  week: z
    .strictObject({ week: two, count: z.enum(['iso', 'first-full-sunday']).optional(), reversed })
    .describe('Week of the year, ISO 8601 unless counted from the first full week from Sunday to Saturday.'),
  quarter: z
    .strictObject({ quarter: z.union([z.literal(1), letters.length(4)]) })
    .describe('Quarter as 1 to 4, or as one of four letters in order.'),
  day: z.strictObject({ day: two, reversed }).describe('Day of the month: both digits, or its tens or units alone.'),
  dayOfYear: z.strictObject({ dayOfYear: z.literal(3), reversed }).describe('Day of the year, 001 to 366.'),
  /** A running number of `min` to `max` digits; the table says when which numbers were made. */
  serial: z.strictObject({
    serial: z.union([
      z.number().int().min(1).max(12),
      z.strictObject({ min: z.number().int().min(1).max(12), max: z.number().int().min(1).max(12) }),
    ]),
    table: z
      .array(
        z.strictObject({
          first: z.number().int().nonnegative(),
          last: z.number().int().nonnegative().nullable(),
          made: period,
        }),
      )
      .max(2000)
      .optional(),
    reversed,
  }),
  check: z.strictObject({
    check: z.enum(['luhn', 'mod10', 'mod11', 'mod97', 'iso6346', 'vin']),
    /** For mod10 and mod11: from the first character when as many as characters, else repeated from the last one. */
    weights: z.array(z.number().int().min(0).max(97)).min(1).max(40).optional(),
    /** Which characters it covers: those before it (usual), or all the others. Separators never count. */
    over: z.enum(['before', 'all']).optional(),
  }),
  any: z.strictObject({
    any: z.number().int().min(1).max(20),
    of: z.enum(['digit', 'letter', 'either']).optional(),
    /** Only these characters, instead of a whole class. */
    from: letters.optional(),
  }),
};

export const slotSchema = z.union([
  slotSchemas.literal,
  slotSchemas.separator,
  slotSchemas.plant,
  ...slotSchemas.year.options,
  ...slotSchemas.month.options,
  slotSchemas.week,
  slotSchemas.quarter,
  slotSchemas.day,
  slotSchemas.dayOfYear,
  slotSchemas.serial,
  slotSchemas.check,
  slotSchemas.any,
]);
export type Slot = z.infer<typeof slotSchema>;

export const layoutSchema = z.array(slotSchema).min(1).max(40);
export type Layout = z.infer<typeof layoutSchema>;
