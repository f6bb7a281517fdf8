import * as z from 'zod';
import { partSchema } from '../claim/types';
import { partialDate, period } from '../span/types';
import { layoutSchema } from './slot-schema';

export type { Period } from '../span';
export { type Layout, layoutSchema, type Slot } from './slot-schema';

const name = z.string().trim().min(1).max(120);
const text = z.string().max(2000);
/** Words for the people who keep the file; nothing reads them. */
const note = text.optional();

const plant = z.strictObject({
  code: z.string().regex(/^[A-Z0-9]{1,6}$/, 'capitals'),
  place: z.string().regex(/^[A-Z]{2}$|^[A-Z]{4}$/, 'country'),
  used: z.union([period, z.array(period).min(1).max(40)]),
  name: name.optional(),
  source: text.optional(),
  note,
});
export type Plant = z.infer<typeof plant>;

const example = z.strictObject({ code: z.string().min(1).max(60), reads: z.string().max(200), note });

const codeSystem = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]{1,60}$/, 'small-letters'),
  name: name.optional(),
  used: period,
  layout: layoutSchema.optional(),
  /** Several layouts for one period, instead of `layout`. */
  layouts: z.array(layoutSchema).min(1).max(20).optional(),
  /** Read right to left before slots are filled. */
  reversed: z.boolean().optional(),
  /** Where on the piece the stamp is found. */
  where: text.optional(),
  examples: z.array(example).min(1).max(200),
  source: text.optional(),
  note,
});
export type CodeSystem = z.infer<typeof codeSystem>;

const construction = z.strictObject({
  part: partSchema,
  is: name,
  /** Other words for the same thing. */
  also: z.array(name).max(40).optional(),
  /** Words that name something else in this part and so speak against it. */
  not: z.array(name).max(80).optional(),
  models: z.array(name).max(100).optional(),
  used: period,
  strength: z.enum(['hard', 'soft']),
  source: text,
  note,
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
  /** Parts that a buyer has to see. */
  parts: z.array(partSchema).max(30).optional(),
  source: text.optional(),
  note,
});
export type Model = z.infer<typeof model>;

const trade = z.strictObject({
  discounts: z.enum(['never', 'rarely', 'often']).optional(),
  sampleSales: z.boolean().optional(),
  seconds: z.boolean().optional(),
  outlets: z.boolean().optional(),
  /** What the smallest new piece costs at least. */
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
  source: text.optional(),
  note,
});

export const makerFileSchema = z.strictObject({
  $schema: text.optional(),
  format: z.literal(1),
  maker: name,
  aliases: z.array(name).max(60).default([]),
  sources: z.array(text).max(60).default([]),
  /** Invented for the demonstration; the screen says so. */
  invented: z.boolean().optional(),
  /** When the maker stamped a code at all. */
  stamped: z.strictObject({ from: partialDate, to: partialDate.nullable(), source: text }).optional(),
  plants: z.array(plant).max(500).default([]),
  /** Whether `plants` lists every plant that the maker had: only then does a code of another one contradict. */
  plantsComplete: z.boolean().optional(),
  codeSystems: z.array(codeSystem).max(60).default([]),
  construction: z.array(construction).max(500).default([]),
  models: z.array(model).max(500).default([]),
  trade: trade.default({}),
  note,
});
export type MakerFile = z.infer<typeof makerFileSchema>;
