import * as z from 'zod';
import { spanSchema } from '../span/types';
import { notedRows, rowNames } from './row-names';

const series = z.enum(['utility', 'design']);
const seriesYears = z.enum(['1842-1867', '1868-1883']);
/** Named in the table of fasteners' patents. */
const patentedFasteners = [
  'garment-fastening',
  'slide-fastening',
  'hookless-fastener',
  'separable-fastener',
  'hook-and-loop-tape',
] as const;
export type PatentedFastener = (typeof patentedFasteners)[number];

/** Why no design was registered under the letters of a diamond mark. */
export const diamondFaultSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('right-corner'), is: z.string() }),
  z.strictObject({ kind: z.literal('year-letter'), is: z.string(), series: seriesYears }),
  z.strictObject({ kind: z.literal('month-letter'), is: z.string() }),
  /** The month has no such day; null where no day could be read. */
  z.strictObject({ kind: z.literal('no-day'), month: z.string(), day: z.number().nullable() }),
  z.strictObject({ kind: z.literal('march-1878') }),
]);
export type DiamondFault = z.infer<typeof diamondFaultSchema>;

/** What a mark tells: what its sentence is made of. The sentence itself stands with the languages. */
export const markSaysSchema = z.discriminatedUnion('kind', [
  /** The mark of a row was in use in the span; `normal`: in normal use, old stock beyond it. `place` where it names one. */
  z.strictObject({
    kind: z.literal('row'),
    row: z.enum(rowNames),
    place: z.string().nullable(),
    span: spanSchema,
    normal: z.boolean(),
  }),
  z.strictObject({ kind: z.literal('grant'), series, number: z.number(), year: z.number(), beyond: z.boolean() }),
  /** No year is certain, but one before which it was not granted. */
  z.strictObject({ kind: z.literal('grant-since'), series, number: z.number(), year: z.number() }),
  z.strictObject({ kind: z.literal('patent-of'), date: z.string() }),
  z.strictObject({
    kind: z.literal('fastener-patent'),
    number: z.number(),
    of: z.enum(patentedFasteners),
    granted: z.string(),
  }),
  z.strictObject({ kind: z.literal('diamond'), days: z.array(z.string()) }),
  z.strictObject({ kind: z.literal('no-diamond'), why: diamondFaultSchema }),
  z.strictObject({
    kind: z.literal('registered-design'),
    number: z.number(),
    years: z.tuple([z.number(), z.number()]),
    beyond: z.boolean(),
  }),
  z.strictObject({
    kind: z.literal('date-letter'),
    office: z.string(),
    letter: z.string(),
    years: z.array(z.number()),
    /** The tables know no letter before this year. */
    first: z.number(),
  }),
  z.strictObject({ kind: z.literal('lone-date-letter'), letter: z.string(), offices: z.enum(['none', 'several']) }),
  z.strictObject({ kind: z.literal('new-fineness'), metal: z.string(), parts: z.number() }),
  z.strictObject({ kind: z.literal('palladium-hallmark') }),
  z.strictObject({ kind: z.literal('fineness'), metal: z.string(), parts: z.number() }),
  z.strictObject({ kind: z.literal('convention-mark') }),
  z.strictObject({ kind: z.literal('textile-number'), series: z.string(), number: z.number(), from: z.number() }),
  z.strictObject({ kind: z.literal('no-textile-number'), series: z.string(), number: z.number() }),
]);
export type MarkSays = z.infer<typeof markSaysSchema>;

const plainCautions = [
  'approximate-table',
  'company-not-piece',
  'corner-misread',
  'dates-grant',
  'dates-label',
  'dates-metal',
  'dates-registration',
  'dates-sale',
  'dates-tag',
  'fastener-replaced',
  'for-us-only',
  'from-below',
  'law-of-us',
  'no-hallmark-alone',
  'not-tuesday',
  'old-labels',
  'other-country',
  'sharper-photo',
] as const;
export type PlainCaution = (typeof plainCautions)[number];

/** What a mark cannot settle, and what to do about it. */
export const markCautionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('row'), row: z.enum(notedRows) }),
  z.strictObject({ kind: z.enum(plainCautions) }),
  z.strictObject({ kind: z.literal('letter-style'), first: z.number() }),
]);
export type MarkCaution = z.infer<typeof markCautionSchema>;
