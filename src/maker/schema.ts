import * as z from 'zod';
import { partSchema } from '../claim/types';

/**
 * A partial ISO date: `YYYY`, `YYYY-MM` or `YYYY-MM-DD`. A period is `[first, last]`, both included;
 * `null` as its last member means "still".
 */
const partialDate = z.string().regex(/^\d{4}(-\d{2}(-\d{2})?)?$/, 'a date as 1994, 1994-03 or 1994-03-21');
const period = z.tuple([partialDate, partialDate.nullable()]);
const name = z.string().trim().min(1).max(120);
const text = z.string().max(2000);

const plant = z.strictObject({
  code: z.string().regex(/^[A-Z0-9]{1,6}$/, 'capital letters or digits'),
  place: z.string().regex(/^[A-Z]{2}$|^[A-Z]{4}$/, 'an ISO 3166 code'),
  used: z.array(period).min(1).or(period),
  name: name.optional(),
  source: text.optional(),
});

const letters = z.string().regex(/^[A-Z0-9]{1,36}$/, 'capital letters or digits');
const slot = z.union([
  z.strictObject({ literal: z.string().min(1).max(20) }),
  /** A separator that may be there: any one of the characters given. */
  z.strictObject({ separator: z.string().min(1).max(10), optional: z.boolean() }),
  z.strictObject({ plant: z.number().int().min(1).max(6) }),
  z.strictObject({ year: z.union([z.literal(4), z.literal(2), z.literal(1), z.literal('tens'), z.literal('units')]) }),
  z.strictObject({
    year: z.literal('cycle'),
    letters,
    first: z.number().int().min(1800).max(2200),
    enclosed: z.boolean().optional(),
  }),
  z.strictObject({ month: z.union([z.literal(2), z.literal('tens'), z.literal('units'), z.literal('1-9OND')]) }),
  z.strictObject({ month: z.literal('letter'), letters: letters.optional() }),
  z.strictObject({ week: z.union([z.literal(2), z.literal('tens'), z.literal('units')]) }),
  z.strictObject({ quarter: z.union([z.literal(1), letters]) }),
  z.strictObject({ day: z.union([z.literal(2), z.literal('tens'), z.literal('units')]) }),
  z.strictObject({ dayOfYear: z.literal(3) }),
  z.strictObject({
    serial: z.strictObject({ min: z.number().int().min(1).max(12), max: z.number().int().min(1).max(12) }),
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
  }),
  z.strictObject({
    check: z.enum(['luhn', 'mod10', 'mod11', 'mod97', 'iso6346', 'vin']),
    weights: z.array(z.number().int()).max(40).optional(),
    over: z.enum(['before', 'all']).optional(),
  }),
  z.strictObject({ any: z.number().int().min(1).max(20), of: z.enum(['digit', 'letter', 'either']).optional() }),
]);
export type Slot = z.infer<typeof slot>;
const layout = z.array(slot).min(1).max(40);
export type Layout = z.infer<typeof layout>;

const codeSystem = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]{1,60}$/, 'small letters, digits and hyphens'),
  name: name.optional(),
  used: period,
  layout: layout.optional(),
  layouts: z.array(layout).min(1).max(20).optional(),
  /** Read right to left before slots are filled. */
  reversed: z.boolean().optional(),
  where: text.optional(),
  examples: z
    .array(z.strictObject({ code: z.string().min(1).max(60), reads: z.string().max(200) }))
    .min(1)
    .max(200),
  source: text.optional(),
});
export type CodeSystem = z.infer<typeof codeSystem>;

const construction = z.strictObject({
  part: partSchema,
  is: name,
  /** Other words for the same thing. */ also: z.array(name).max(40).optional(),
  /** Words that name something else in this part and so speak against it. */ not: z.array(name).max(80).optional(),
  models: z.array(name).optional(),
  used: period,
  strength: z.enum(['hard', 'soft']),
  source: text,
});
export type Construction = z.infer<typeof construction>;

const model = z.strictObject({
  name,
  aliases: z.array(name).max(40).optional(),
  made: period.optional(),
  size: z
    .strictObject({
      width: z.number().positive(),
      height: z.number().positive().optional(),
      depth: z.number().positive().optional(),
      unit: z.enum(['cm', 'mm', 'in']),
      tolerance: z.number().nonnegative(),
    })
    .optional(),
  /** Parts that a buyer has to see. */ parts: z.array(partSchema).optional(),
  source: text.optional(),
});
export type Model = z.infer<typeof model>;

export const makerFileSchema = z.strictObject({
  format: z.literal(1),
  maker: name,
  aliases: z.array(name).max(60),
  sources: z.array(text).min(1).max(60),
  /** Invented for the demonstration; the screen says so. */
  invented: z.boolean().optional(),
  stamped: z.strictObject({ from: partialDate, to: partialDate.nullable(), source: text }).optional(),
  plants: z.array(plant).max(500),
  codeSystems: z.array(codeSystem).max(60),
  construction: z.array(construction).max(500),
  models: z.array(model).max(500),
  trade: z.strictObject({
    discounts: z.enum(['never', 'rarely', 'often']).optional(),
    sampleSales: z.boolean().optional(),
    seconds: z.boolean().optional(),
    outlets: z.boolean().optional(),
    newPriceFloor: z
      .array(
        z.strictObject({
          amount: z.number().positive(),
          currency: z.string().regex(/^[A-Z]{3}$/),
          year: z.number().int(),
        }),
      )
      .optional(),
    source: text.optional(),
  }),
});
export type MakerFile = z.infer<typeof makerFileSchema>;
export type Plant = z.infer<typeof plant>;
