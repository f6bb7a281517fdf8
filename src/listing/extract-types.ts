import * as z from 'zod';
import { pickFieldSchema } from './pick-types';
import { listingSchema, originSchema } from './types';

/** A label and its value as a page or its data gives them, before anyone knows what the label means. */
export const labelledSchema = z.strictObject({
  name: z.string(),
  value: z.string(),
  origin: originSchema,
  where: z.string(),
  confidence: z.number().min(0).max(1),
  caveats: z.array(z.string()).optional(),
});
export type Labelled = z.infer<typeof labelledSchema>;

/** What the structure of a page tells of its kind, before its words are read. */
export const pageSignsSchema = z.strictObject({
  /** The buyer pointed at a title or a price. */
  pointed: z.boolean(),
  /** Whether the data names one product as the page's. */
  product: z.enum(['clear', 'unclear', 'none']),
  /** Whether that product has an offer. */
  offered: z.boolean(),
  products: z.number().int().nonnegative(),
  /** Cards of other listings that show a price. */
  cards: z.number().int().nonnegative(),
  /** Confidence of the likeliest price that stands by itself, 0 without one. */
  ownPrice: z.number().min(0).max(1),
  priceWithoutWords: z.boolean(),
  headType: z.string().nullable(),
  published: z.boolean(),
  article: z.boolean(),
  list: z.boolean(),
  /** Words of what can be pressed. */
  controls: z.array(z.string()),
  /** Something to press is named for selling. */
  sells: z.boolean(),
  /** Parts of the page or of its data were not read. */
  cut: z.boolean(),
});
export type PageSigns = z.infer<typeof pageSignsSchema>;

/** What the page script noted of the page as a whole; it is put into words outside of the page. */
const pageNoteSchema = z.strictObject({
  code: z.enum([
    'page-is-picture',
    'page-is-pdf',
    'which-product',
    'pick-the-variant',
    'data-stale',
    'price-not-in-text',
    'frame-not-read',
    'page-changing',
    'page-still-loading',
    'data-cut',
    'data-unreadable',
    'data-too-long-to-repair',
    'photo-without-address',
    'pick-not-found',
    'pick-unreadable',
  ]),
  where: z.string(),
  /** What is counted, by the code: pieces, thousands of characters, levels, photos; else 0. */
  count: z.number().int().nonnegative(),
  /** The field that was pointed at. */
  field: pickFieldSchema.optional(),
});
export type PageNote = z.infer<typeof pageNoteSchema>;

/** What the page script hands over: the listing as far as the page's structure tells, and words still to be read. */
export const pageExtractSchema = z.strictObject({
  listing: listingSchema,
  labelled: z.array(labelledSchema),
  signs: pageSignsSchema,
  notes: z.array(pageNoteSchema),
  /** What the page keeps for its own scripts: things with a price, by the path of their short values, and long texts. */
  state: z.strictObject({ things: z.array(z.record(z.string(), z.string())), texts: z.array(z.string()) }),
  /** What the budget left out; `nodesRead` is null where all elements and texts were read. */
  cut: z.strictObject({
    nodesRead: z.number().int().nonnegative().nullable(),
    attributes: z.number().int().nonnegative(),
    characters: z.number().int().nonnegative(),
  }),
  picked: z.array(z.strictObject({ field: pickFieldSchema, words: z.string(), where: z.string() })),
  /** The sentences of the page's footers: a shop's terms stand there. */
  footer: z.string(),
});
export type PageExtract = z.infer<typeof pageExtractSchema>;
