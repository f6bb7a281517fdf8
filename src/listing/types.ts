import * as z from 'zod';
import { problemSchema } from '../problem/schema';
import { spanSchema } from '../span/types';

/**
 * An address of the web. Whatever else calls itself an address (`javascript:`, `data:`, `file:`) never becomes part of
 * a listing, wherever it came from: a page, a message or an imported file.
 */
export const webAddressSchema = z.string().regex(/^https?:\/\/[^\s/]/i, 'no web address (http or https)');

/** A photo's address; `blob:` is a picture that the page itself made, and leads nowhere but into that page. */
export const photoAddressSchema = z
  .string()
  .regex(/^(blob:)?https?:\/\/[^\s/]/i, 'no address of a photo (http or https)');

export const originSchema = z.enum(['user-pick', 'json-ld', 'microdata', 'rdfa', 'open-graph', 'meta', 'visible']);
export type Origin = z.infer<typeof originSchema>;

/** One value that a field may have, where it was read (selector, path or tag), and how far to trust it (0 to 1). */
const candidate = <T extends z.ZodType>(value: T) =>
  z.strictObject({
    value,
    origin: originSchema,
    where: z.string(),
    confidence: z.number().min(0).max(1),
    /** The characters that the value was read from, when they differ from it. */
    words: z.string().optional(),
    /** Why the value is weaker than it looks: 'repaired', 'stale', 'hidden', 'ambiguous', … */
    caveats: z.array(z.string()).optional(),
  });

/** One fact of a listing: every candidate, best first; empty when the page does not say. */
const field = <T extends z.ZodType>(value: T) => z.array(candidate(value));

export interface Candidate<T> {
  value: T;
  origin: Origin;
  where: string;
  confidence: number;
  words?: string | undefined;
  caveats?: string[] | undefined;
}
export type Field<T> = Candidate<T>[];

/**
 * An amount of money in minor units of `currency` (ISO 4217; cents, pence; yen have none), as an integer.
 * `currency` is null when the page does not settle it; `currencies` then lists what it may be.
 */
export const priceSchema = z.strictObject({
  /** At an auction the current bid is the sale; `start`, `next-bid`, `buy-now` and `estimate` are its other amounts. */
  kind: z.enum([
    'sale',
    'was',
    'from',
    'range',
    'unit',
    'shipping',
    'instalment',
    'start',
    'next-bid',
    'buy-now',
    'estimate',
  ]),
  minor: z.number().int().nonnegative(),
  /** Upper end of a range, minor units. */
  minorTo: z.number().int().nonnegative().optional(),
  /** Decimal places of `minor`: 2 for euro, 0 for yen. */
  exponent: z.number().int().min(0).max(4),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .nullable(),
  currencies: z.array(z.string()),
  /** Other amounts that the same characters may mean ("1.299"), minor units. */
  otherMinor: z.array(z.number().int().nonnegative()).optional(),
});
export type Price = z.infer<typeof priceSchema>;

/** A stated measurement in millimetres; `precisionMm` is half of the last stated step. */
export const measureSchema = z.strictObject({
  dimension: z.enum(['width', 'height', 'depth', 'strap', 'handle', 'unknown']),
  mm: z.number().positive(),
  precisionMm: z.number().positive(),
  unit: z.enum(['mm', 'cm', 'in', 'assumed-cm']),
  words: z.string(),
});
export type Measure = z.infer<typeof measureSchema>;

export const conditionSchema = z.enum(['new', 'unused', 'as-new', 'used-very-good', 'used', 'worn', 'damaged']);
export type Condition = z.infer<typeof conditionSchema>;

export const ratingSchema = z.strictObject({
  /** Share of the scale's best value, 0 to 1. */
  share: z.number().min(0).max(1),
  /** Number of ratings, null when not shown. */
  count: z.number().int().nonnegative().nullable(),
  words: z.string(),
});
export type Rating = z.infer<typeof ratingSchema>;

export const returnsSchema = z.strictObject({
  accepted: z.boolean(),
  days: z.number().int().positive().nullable(),
  words: z.string(),
});

export const sellerSchema = z.strictObject({
  name: field(z.string()),
  rating: field(ratingSchema),
  salesCount: field(z.number().int().nonnegative()),
  memberSince: field(spanSchema),
  trader: field(z.enum(['private', 'trader'])),
  place: field(z.string()),
});

/** A photo that the page offers; `url` is the largest version known. */
export const photoLinkSchema = z.strictObject({
  id: z.string(),
  url: photoAddressSchema,
  /** Smaller versions of the same photo, largest first. */
  alternatives: z.array(photoAddressSchema),
  width: z.number().int().positive().nullable(),
  height: z.number().int().positive().nullable(),
  alt: z.string(),
  origins: z.array(originSchema),
});
export type PhotoLink = z.infer<typeof photoLinkSchema>;

/** The signs by which a page is told; each is named for what it is. */
export const pageToldSchema = z.strictObject({
  kind: z.enum(['offer', 'auction', 'ended', 'list', 'article', 'cut', 'none']),
  evidence: z.array(
    z.enum([
      'pointed-at',
      'product-data',
      'product-data-without-offer',
      'head-says-product',
      'buying-control',
      'selling-form',
      'price-in-its-place',
      'price-alone',
      'place-for-a-price',
      'auction-amounts',
      'said-to-be-gone',
      'head-says-article',
      'article-data',
      'publication-time',
      'cards-with-prices',
      'many-cards-with-prices',
      'list-data',
      'products-none-of-them-this-page',
    ]),
  ),
});

export const listingSchema = z.strictObject({
  format: z.literal(1),
  url: webAddressSchema,
  readAt: z.iso.datetime({ error: 'no date and time' }),
  /**
   * 'listing' offers one piece; 'list' offers many; 'article' tells of things; 'none' offers nothing that was found;
   * 'cut' is too large to be read whole, and what was read does not tell.
   */
  kind: z.enum(['listing', 'list', 'article', 'cut', 'none']),
  /** What kind of page it is, and what speaks for it; absent where an older version read the page. */
  page: pageToldSchema.optional(),
  /** BCP 47 tag, null when unknown. */
  language: z.string().nullable(),
  title: field(z.string()),
  description: field(z.string()),
  /** Visible text of the listing's own area, hidden text left out, at most 50,000 characters. */
  text: z.string(),
  maker: field(z.string()),
  model: field(z.string()),
  itemCode: field(z.string()),
  price: field(priceSchema),
  condition: field(conditionSchema),
  availability: field(z.enum(['offered', 'sold', 'removed', 'reserved'])),
  measures: field(measureSchema),
  colour: field(z.string()),
  material: field(z.string()),
  posted: field(spanSchema),
  /** When an auction ends or ended; absent where an older version read the page. */
  ends: field(spanSchema).optional(),
  watchers: field(z.number().int().nonnegative()),
  bids: field(z.number().int().nonnegative()),
  returns: field(returnsSchema),
  shipping: field(z.string()),
  payment: field(z.string()),
  seller: sellerSchema,
  photos: z.array(photoLinkSchema),
  problems: z.array(problemSchema),
});
export type Listing = z.infer<typeof listingSchema>;
