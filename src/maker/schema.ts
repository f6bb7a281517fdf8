import * as z from 'zod';
import { besideMarkKinds } from '../code/beside-types';
import { conditionSchema } from '../listing/types';
import { fileDate, period } from '../span/types';
import { entryFields, name, names, ofPieces, periods, text } from './entry-schema';
import { numberSchema } from './number-schema';
import { typefaceSchema } from './picture-schema';
import { layoutSchema } from './slot-schema';

export type { Period } from '../span';
export type { Entry } from './entry-schema';
export { type Layout, layoutSchema, type Slot } from './slot-schema';

const year = z.number().int().min(1800).max(2200);
const currency = z.string().regex(/^[A-Z]{3}$/, 'currency');
/** A part that the program knows, or one of the file's own. */
export const partName = z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, 'small-letters');
const systemId = z.string().regex(/^[a-z0-9-]{1,60}$/, 'small-letters');

const plant = z.strictObject({
  code: z.string().regex(/^[A-Z0-9]{1,6}$/, 'capitals'),
  /** ZZ where it is not known. */
  place: z.string().regex(/^[A-Z]{2}$|^[A-Z]{4}$/, 'country'),
  town: name.optional(),
  used: periods,
  name: name.optional(),
  ...entryFields,
});
export type Plant = z.infer<typeof plant>;

const example = z.strictObject({
  code: z.string().min(1).max(60),
  reads: z.string().max(200),
  note: text.optional(),
});

const codeSystem = z.strictObject({
  id: systemId,
  name: name.optional(),
  used: period,
  layout: layoutSchema.optional(),
  /** Several layouts for one period, instead of `layout`. */
  layouts: z.array(layoutSchema).min(1).max(20).optional(),
  /** Read right to left before slots are filled. */
  reversed: z.boolean().optional(),
  examples: z.array(example).min(1).max(200),
  ...entryFields,
});
export type CodeSystem = z.infer<typeof codeSystem>;

export const carrierKinds = ['stamp', 'tab', 'sticker', 'card', 'chip', 'woven-label'] as const;
export type CarrierKind = (typeof carrierKinds)[number];

/** What carries the code, and where on the piece it sits. */
const carrier = z.strictObject({
  kind: z.enum(carrierKinds),
  /** Where it sits, in words: "behind the inner pocket". */
  where: text.min(1),
  /** The code systems that it carries; its years are then theirs. */
  systems: z.array(systemId).max(60).optional(),
  /** False where a buyer cannot read a code on it, as on a chip. */
  readable: z.boolean().optional(),
  ...ofPieces,
  ...entryFields,
});

/** A mark that stands beside the code and is none. */
const besideMark = z.strictObject({
  kind: z.enum(besideMarkKinds),
  /** How it is written; several where each means the same. */
  texts: z.array(z.string().trim().min(1).max(20)).min(1).max(60),
  means: text.min(1),
  ...ofPieces,
  ...entryFields,
});

/** A part of the file's own, with the words by which listings name it. */
const ownPart = z.strictObject({ id: partName, words: names.min(1) });

const construction = z.strictObject({
  part: partName,
  is: name,
  /** Other words for the same thing. */
  also: z.array(name).max(40).optional(),
  /** Words that name something else in this part and so speak against it. */
  not: z.array(name).max(80).optional(),
  models: names.optional(),
  used: period,
  ...entryFields,
});
export type Construction = z.infer<typeof construction>;

const size = z.strictObject({
  width: z.number().positive(),
  height: z.number().positive().optional(),
  depth: z.number().positive().optional(),
  unit: z.enum(['cm', 'mm', 'in']),
  tolerance: z.number().nonnegative(),
});
export type Size = z.infer<typeof size>;

export const runKinds = ['edition', 're-issue', 'collaboration'] as const;

/** Years in which a model was made to one size: another size, and what was made again, is another run. */
const run = z.strictObject({
  made: periods.optional(),
  size: size.optional(),
  /** A limited edition, a re-issue, a collaboration; left out, the usual make. */
  kind: z.enum(runKinds).optional(),
  /** What it was sold as. */
  name: name.optional(),
  /** With whom it was made. */
  with: name.optional(),
  /** How many were made. */
  pieces: z.number().int().positive().optional(),
  ...entryFields,
});
export type Run = z.infer<typeof run>;

const model = z.strictObject({
  name,
  aliases: z.array(name).max(40).optional(),
  runs: z.array(run).max(60).optional(),
  /** Parts that a buyer has to see. */
  parts: z.array(partName).max(30).optional(),
  ...entryFields,
});
export type Model = z.infer<typeof model>;

/** What a model cost in a condition and year; without a model, what any piece did: the smallest least. */
const price = z.strictObject({
  model: name.optional(),
  condition: conditionSchema,
  least: z.number().positive().optional(),
  most: z.number().positive().optional(),
  currency,
  year,
  ...entryFields,
});
export type FilePrice = z.infer<typeof price>;

const trade = z.strictObject({
  discounts: z.enum(['never', 'rarely', 'often']).optional(),
  sampleSales: z.boolean().optional(),
  seconds: z.boolean().optional(),
  outlets: z.boolean().optional(),
  ...entryFields,
});

export const makerFileSchema = z.strictObject({
  $schema: text.optional(),
  format: z.literal(2),
  maker: name,
  aliases: z.array(name).max(60).default([]),
  sources: z.array(text).max(60).default([]),
  /** Who wrote the file. */
  authors: z.array(name).max(60).optional(),
  /** Under which terms it may be passed on: "CC0-1.0", or in words. */
  licence: name.optional(),
  /** Invented for the demonstration; the screen says so. */
  invented: z.boolean().optional(),
  /** When the maker stamped a code at all. */
  stamped: z.strictObject({ from: fileDate, to: fileDate.nullable(), ...entryFields }).optional(),
  plants: z.array(plant).max(500).default([]),
  /** Whether `plants` lists every plant that the maker had: only then does a code of another one contradict. */
  plantsComplete: z.boolean().optional(),
  codeSystems: z.array(codeSystem).max(60).default([]),
  carriers: z.array(carrier).max(200).default([]),
  marks: z.array(besideMark).max(200).default([]),
  parts: z.array(ownPart).max(60).default([]),
  construction: z.array(construction).max(500).default([]),
  models: z.array(model).max(500).default([]),
  numbers: z.array(numberSchema).max(200).default([]),
  typefaces: z.array(typefaceSchema).max(40).default([]),
  prices: z.array(price).max(1000).default([]),
  trade: trade.default({}),
  note: text.optional(),
});
export type MakerFile = z.infer<typeof makerFileSchema>;
