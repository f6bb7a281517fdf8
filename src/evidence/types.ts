import * as z from 'zod';
import { sourceSchema, strengthSchema } from '../source';
import { spanSchema } from '../span/types';
import { ageSaysSchema, priceSaysSchema, qualitySaysSchema, saysSchema, sizeSaysSchema, valueSaysSchema } from './says';

/**
 * One statement. `spans` (any of them) and `places` (any of them) are what it allows; empty says nothing. `basis`
 * groups statements that come from the same fact, so that a fact repeated is not counted twice.
 */
const common = {
  id: z.string(),
  basis: z.string(),
  spans: z.array(spanSchema),
  /** Dates within which nothing conflicts with it; the spans themselves unless given. */
  reach: z.array(spanSchema).optional(),
  /** Dates beyond which a conflict with it is hard, null for never; unless given the reach of what is hard. */
  hardReach: z.array(spanSchema).nullable().optional(),
  places: z.array(z.string()),
  strength: strengthSchema,
  source: sourceSchema,
};

/** How a code's date stands to the time of its own system or plant: within it, just outside, or beyond what stock explains. */
export const ownTimeSchema = z.enum(['within', 'near', 'beyond']);
export type OwnTime = z.infer<typeof ownTimeSchema>;

/** What dates and places the piece: all of it is weighed together. */
export const datingSchema = z.strictObject({
  ...common,
  about: z.enum(['date', 'place', 'date-and-place']),
  from: z.strictObject({
    kind: z.enum(['claim', 'reading', 'mark', 'construction', 'system', 'plant']),
    id: z.string(),
  }),
  /** Of a code, reading by reading; null where not every reading has both. */
  ownTime: z.strictObject({ system: ownTimeSchema.nullable(), plant: ownTimeSchema.nullable() }).optional(),
  says: saysSchema,
});
export type Dating = z.infer<typeof datingSchema>;

/** What is held against single other facts, and narrows no date and no place. */
const aside = {
  ...common,
  from: z.strictObject({ kind: z.enum(['claim', 'listing', 'code', 'maker-file', 'clock', 'photo']), id: z.string() }),
};

/** From least to most, of what and in which unit: millimetres, a currency, a ratio. */
const amountSchema = z.strictObject({ of: z.string(), unit: z.string(), least: z.number(), most: z.number() });
export type Amount = z.infer<typeof amountSchema>;
const amounts = z.array(amountSchema).min(1);

export const evidenceSchema = z.discriminatedUnion('about', [
  datingSchema,
  /** An age on the day of the look, or a time of something else than the making; its spans are what it allows. */
  z.strictObject({ ...aside, about: z.literal('age'), says: ageSaysSchema }),
  /** The length of a side. */
  z.strictObject({ ...aside, about: z.literal('size'), amounts, says: sizeSaysSchema }),
  /** A sum of money, in its own currency first. */
  z.strictObject({ ...aside, about: z.literal('price'), amounts, says: priceSaysSchema }),
  /** A value that is measured or worked out, such as the proportion of two sides. */
  z.strictObject({ ...aside, about: z.literal('value'), amounts, says: valueSaysSchema }),
  /** How the piece is: any of the words in `is`, of what is asked in `of`. */
  z.strictObject({
    ...aside,
    about: z.literal('quality'),
    quality: z.strictObject({ of: z.string(), is: z.array(z.string()).min(1) }),
    says: qualitySaysSchema,
  }),
]);
export type Evidence = z.infer<typeof evidenceSchema>;
export type EvidenceAbout<A extends Evidence['about']> = Extract<Evidence, { about: A }>;
type SaysKind = Evidence['says']['kind'];
type EvidenceSaying<K extends SaysKind> = Evidence & { says: Extract<Evidence['says'], { kind: K }> };
/** Whether a piece says one kind of thing. */
export const isSaying =
  <K extends SaysKind>(kind: K) =>
  (piece: Evidence): piece is EvidenceSaying<K> =>
    piece.says.kind === kind;

export const isDating = (piece: Evidence): piece is Dating =>
  piece.about === 'date' || piece.about === 'place' || piece.about === 'date-and-place';
/** What of it dates and places the piece. */
export const datingOf = (evidence: readonly Evidence[]): Dating[] => evidence.filter(isDating);

/** The part of it that a sentence is made of. */
export const statedSchema = datingSchema.pick({ says: true, spans: true, places: true });
export type Stated = z.infer<typeof statedSchema>;
export const statedOf = ({ says, spans, places }: Dating): Stated => ({ says, spans, places });
