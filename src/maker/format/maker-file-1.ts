import * as z from 'zod';

/*
 * The first format of a maker file, as it was written until the second one. It follows no change elsewhere and is not
 * edited: files, drafts and exports of that time are read by the form of their day.
 */

const date1 = z.string().regex(/^\d{4}(-\d{2}(-\d{2})?)?$/, 'partial-date');
const period1 = z.tuple([date1, date1.nullable()]);

const letters1 = z.string().regex(/^[A-Z0-9]{1,36}$/, 'capitals');
const printable1 = z.string().regex(/^[^\p{C}\u{10000}-\u{10FFFF}]+$/u, 'printable');
const reversed1 = z.boolean().optional();
const optional1 = z.boolean().optional();
const two1 = z.union([z.literal(2), z.literal('tens'), z.literal('units')]);
const count1 = z.number().int().min(1).max(12);

const slot1 = z.union([
  z.strictObject({ literal: printable1.max(20), optional: optional1 }),
  z.strictObject({ separator: printable1.max(10), optional: optional1 }),
  z.strictObject({ plant: z.number().int().min(1).max(6) }),
  z.strictObject({
    year: z.union([z.literal(4), z.literal(2), z.literal(1), z.literal('tens'), z.literal('units')]),
    reversed: reversed1,
  }),
  z.strictObject({
    year: z.literal('cycle'),
    letters: letters1,
    first: z.number().int().min(1800).max(2200),
    enclosed: z.boolean().optional(),
  }),
  z.strictObject({ month: two1, reversed: reversed1 }),
  z.strictObject({ month: z.enum(['1-9OND', '1-9']) }),
  z.strictObject({ month: z.literal('letter'), letters: letters1.length(12).optional() }),
  z.strictObject({ week: two1, count: z.enum(['iso', 'first-full-sunday']).optional(), reversed: reversed1 }),
  z.strictObject({ quarter: z.union([z.literal(1), letters1.length(4)]) }),
  z.strictObject({ day: two1, reversed: reversed1 }),
  z.strictObject({ dayOfYear: z.literal(3), reversed: reversed1 }),
  z.strictObject({
    serial: z.union([count1, z.strictObject({ min: count1, max: count1 })]),
    table: z
      .array(
        z.strictObject({
          first: z.number().int().nonnegative(),
          last: z.number().int().nonnegative().nullable(),
          made: period1,
        }),
      )
      .max(2000)
      .optional(),
    reversed: reversed1,
  }),
  z.strictObject({
    check: z.enum(['luhn', 'mod10', 'mod11', 'mod97', 'iso6346', 'vin']),
    weights: z.array(z.number().int().min(0).max(97)).min(1).max(40).optional(),
    over: z.enum(['before', 'all']).optional(),
  }),
  z.strictObject({
    any: z.number().int().min(1).max(20),
    of: z.enum(['digit', 'letter', 'either']).optional(),
    from: letters1.optional(),
  }),
]);
const layout1 = z.array(slot1).min(1).max(40);

const name1 = z.string().trim().min(1).max(120);
const text1 = z.string().max(2000);
const note1 = text1.optional();
const part1 = z.enum([
  'body',
  'lining',
  'stitching',
  'trim',
  'hardware',
  'zip',
  'handle',
  'strap',
  'base',
  'edge',
  'tab',
  'lock',
  'dust-bag',
  'pattern',
]);

export const makerFile1 = z.strictObject({
  $schema: text1.optional(),
  format: z.literal(1),
  maker: name1,
  aliases: z.array(name1).max(60).default([]),
  sources: z.array(text1).max(60).default([]),
  invented: z.boolean().optional(),
  stamped: z.strictObject({ from: date1, to: date1.nullable(), source: text1 }).optional(),
  plants: z
    .array(
      z.strictObject({
        code: z.string().regex(/^[A-Z0-9]{1,6}$/, 'capitals'),
        place: z.string().regex(/^[A-Z]{2}$|^[A-Z]{4}$/, 'country'),
        used: z.union([period1, z.array(period1).min(1).max(40)]),
        name: name1.optional(),
        source: text1.optional(),
        note: note1,
      }),
    )
    .max(500)
    .default([]),
  plantsComplete: z.boolean().optional(),
  codeSystems: z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z0-9-]{1,60}$/, 'small-letters'),
        name: name1.optional(),
        used: period1,
        layout: layout1.optional(),
        layouts: z.array(layout1).min(1).max(20).optional(),
        reversed: z.boolean().optional(),
        where: text1.optional(),
        examples: z
          .array(z.strictObject({ code: z.string().min(1).max(60), reads: z.string().max(200), note: note1 }))
          .min(1)
          .max(200),
        source: text1.optional(),
        note: note1,
      }),
    )
    .max(60)
    .default([]),
  construction: z
    .array(
      z.strictObject({
        part: part1,
        is: name1,
        also: z.array(name1).max(40).optional(),
        not: z.array(name1).max(80).optional(),
        models: z.array(name1).max(100).optional(),
        used: period1,
        strength: z.enum(['hard', 'soft']),
        source: text1,
        note: note1,
      }),
    )
    .max(500)
    .default([]),
  models: z
    .array(
      z.strictObject({
        name: name1,
        aliases: z.array(name1).max(40).optional(),
        made: period1.optional(),
        size: z
          .strictObject({
            width: z.number().positive(),
            height: z.number().positive().optional(),
            depth: z.number().positive().optional(),
            unit: z.enum(['cm', 'mm', 'in']),
            tolerance: z.number().nonnegative(),
          })
          .optional(),
        parts: z.array(part1).max(30).optional(),
        source: text1.optional(),
        note: note1,
      }),
    )
    .max(500)
    .default([]),
  trade: z
    .strictObject({
      discounts: z.enum(['never', 'rarely', 'often']).optional(),
      sampleSales: z.boolean().optional(),
      seconds: z.boolean().optional(),
      outlets: z.boolean().optional(),
      newPriceFloor: z
        .array(
          z.strictObject({
            amount: z.number().positive(),
            currency: z.string().regex(/^[A-Z]{3}$/, 'currency'),
            year: z.number().int().min(1800).max(2200),
          }),
        )
        .max(200)
        .optional(),
      source: text1.optional(),
      note: note1,
    })
    .default({}),
  note: note1,
});
