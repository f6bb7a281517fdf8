import * as z from 'zod';
import { anyMoment1, photoAddress1, problem1, span1, webAddress1 } from './forms-1';

const origin = z.enum(['user-pick', 'json-ld', 'microdata', 'rdfa', 'open-graph', 'meta', 'visible']);

export const field1 = <T extends z.ZodType>(value: T) =>
  z.array(
    z.strictObject({
      value,
      origin,
      where: z.string(),
      confidence: z.number().min(0).max(1),
      words: z.string().optional(),
      caveats: z.array(z.string()).optional(),
    }),
  );

export const price1 = z.strictObject({
  kind: z.enum(['sale', 'was', 'from', 'range', 'unit', 'shipping', 'instalment']),
  minor: z.number().int().nonnegative(),
  minorTo: z.number().int().nonnegative().optional(),
  exponent: z.number().int().min(0).max(4),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .nullable(),
  currencies: z.array(z.string()),
  otherMinor: z.array(z.number().int().nonnegative()).optional(),
});

const measure = z.strictObject({
  dimension: z.enum(['width', 'height', 'depth', 'strap', 'handle', 'unknown']),
  mm: z.number().positive(),
  precisionMm: z.number().positive(),
  unit: z.enum(['mm', 'cm', 'in', 'assumed-cm']),
  words: z.string(),
});

const rating = z.strictObject({
  share: z.number().min(0).max(1),
  count: z.number().int().nonnegative().nullable(),
  words: z.string(),
});

const returns = z.strictObject({
  accepted: z.boolean(),
  days: z.number().int().positive().nullable(),
  words: z.string(),
});

const photo = z.strictObject({
  id: z.string(),
  url: photoAddress1,
  alternatives: z.array(photoAddress1),
  width: z.number().int().positive().nullable(),
  height: z.number().int().positive().nullable(),
  alt: z.string(),
  origins: z.array(origin),
});

/** What a page offered, as looks keep it. */
export const listing1 = z.strictObject({
  format: z.literal(1),
  url: webAddress1,
  readAt: anyMoment1,
  kind: z.enum(['listing', 'list', 'none']),
  language: z.string().nullable(),
  title: field1(z.string()),
  description: field1(z.string()),
  text: z.string(),
  maker: field1(z.string()),
  model: field1(z.string()),
  itemCode: field1(z.string()),
  price: field1(price1),
  condition: field1(z.enum(['new', 'unused', 'as-new', 'used-very-good', 'used', 'worn', 'damaged'])),
  availability: field1(z.enum(['offered', 'sold', 'removed', 'reserved'])),
  measures: field1(measure),
  colour: field1(z.string()),
  material: field1(z.string()),
  posted: field1(span1),
  watchers: field1(z.number().int().nonnegative()),
  bids: field1(z.number().int().nonnegative()),
  returns: field1(returns),
  shipping: field1(z.string()),
  payment: field1(z.string()),
  seller: z.strictObject({
    name: field1(z.string()),
    rating: field1(rating),
    salesCount: field1(z.number().int().nonnegative()),
    memberSince: field1(span1),
    trader: field1(z.enum(['private', 'trader'])),
    place: field1(z.string()),
  }),
  photos: z.array(photo),
  problems: z.array(problem1),
});
