import * as z from 'zod';
import { conditionSchema, measureSchema, priceSchema } from '../listing/types';
import { spanSchema } from '../span/types';

/** Where a claim stands: the listing's field, and the half-open range of characters in that field's best value. */
export const claimPlaceSchema = z.strictObject({
  field: z.enum(['title', 'description', 'text', 'data', 'reply', 'user']),
  start: z.number().int().nonnegative(),
  end: z.number().int().nonnegative(),
});

const said = { id: z.string(), words: z.string(), at: claimPlaceSchema, confidence: z.number().min(0).max(1) };

/** Whether the words are said of the piece or denied of it. */
const polarity = z.enum(['is', 'is-not']);

export const partSchema = z.enum([
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
export type Part = z.infer<typeof partSchema>;

/** What is told of an event beside what it was; absent where it is not told. */
const eventDetails = {
  /** When it was. */
  span: spanSchema.optional(),
  by: z.enum(['maker', 'craftsman', 'seller']).optional(),
  /** The seller has a paper of it. */
  invoice: z.literal(true).optional(),
};
export type EventDetails = z.infer<z.ZodObject<typeof eventDetails>>;

/** A statement of the seller about the piece or its sale, with the words that it stands in. */
export const claimSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('made'), ...said, span: spanSchema }),
  /** A year of purchase bounds the making from above only. */
  z.strictObject({
    kind: z.literal('bought'),
    ...said,
    span: spanSchema,
    how: z.literal('gifted').optional(),
    invoice: eventDetails.invoice,
  }),
  z.strictObject({ kind: z.literal('condition'), ...said, condition: conditionSchema }),
  z.strictObject({ kind: z.literal('material'), ...said, part: partSchema, material: z.string() }),
  /** Parts that are not the maker's any more; none where the piece was restored without saying which. */
  z.strictObject({
    kind: z.literal('replaced'),
    ...said,
    parts: z.array(partSchema),
    /** Absent where the part is another one now. */
    how: z.enum(['relined', 're-dyed', 'repaired']).optional(),
    ...eventDetails,
  }),
  z.strictObject({ kind: z.literal('appraised'), ...said, ...eventDetails }),
  z.strictObject({ kind: z.literal('measure'), ...said, measure: measureSchema }),
  z.strictObject({ kind: z.literal('maker'), ...said, maker: z.string() }),
  z.strictObject({ kind: z.literal('model'), ...said, model: z.string() }),
  /** ISO 3166-1 alpha-2 (or ISO 3166-3 alpha-4) code. */
  z.strictObject({ kind: z.literal('origin'), ...said, place: z.string() }),
  /** By what the number is taken for a code: words that lead to it, its place on the piece, or a layout of this maker. */
  z.strictObject({
    kind: z.literal('code'),
    ...said,
    code: z.string(),
    takenBy: z.strictObject({ by: z.enum(['words', 'place', 'layout']), words: z.string() }).optional(),
    /** "KV0915 or KV0975": the seller does not know which it is. */
    oneOf: z.literal(true).optional(),
  }),
  z.strictObject({ kind: z.literal('no-code'), ...said }),
  z.strictObject({ kind: z.literal('price'), ...said, price: priceSchema }),
  z.strictObject({
    kind: z.literal('sale-channel'),
    ...said,
    channel: z.enum(['discount', 'outlet', 'sample-sale', 'seconds']),
  }),
  z.strictObject({ kind: z.literal('payment-outside'), ...said }),
  z.strictObject({ kind: z.literal('returns'), ...said, accepted: z.boolean() }),
  z.strictObject({ kind: z.literal('hedged-authorship'), ...said }),
  /** How the trade grades copies: "mirror quality". */
  z.strictObject({ kind: z.literal('grade-of-copy'), ...said, polarity }),
  /** Photos or text that are not of the piece itself: "stock photo". */
  z.strictObject({ kind: z.literal('not-this-piece'), ...said, polarity }),
  /** Several of one kind are on offer; null where their number is not said. */
  z.strictObject({ kind: z.literal('in-stock'), ...said, count: z.number().int().min(2).nullable() }),
  /** Made by somebody else out of an older piece: its stamp and materials are those of that one. */
  z.strictObject({ kind: z.literal('remade'), ...said, polarity }),
  /** The seller does not vouch for who made it: "not sure if it is real". */
  z.strictObject({ kind: z.literal('not-vouched'), ...said, polarity }),
  /** What is offered is the box or pouch without the piece. */
  z.strictObject({ kind: z.literal('packaging-only'), ...said, polarity }),
  /** Ready-made assurances that say nothing of this piece: "100% authentic". */
  z.strictObject({ kind: z.literal('assurance'), ...said, polarity }),
  /** Words that hurry a buyer or refuse questions. */
  z.strictObject({ kind: z.literal('hurry'), ...said }),
  /** Signs of use. */
  z.strictObject({
    kind: z.literal('wear'),
    ...said,
    polarity,
    /** From lying in a shop or a cupboard: what was never used may have it. */
    fromLying: z.literal(true).optional(),
  }),
  /** A surface that is leather, or a material made to look like it. */
  z.strictObject({
    kind: z.literal('leather'),
    ...said,
    real: z.boolean(),
    /** The part that it is said of; null where it is said of the piece. */
    of: partSchema.exclude(['body']).nullable(),
    /** Named in one breath with leather: of some part, which is not said. */
    inPart: z.literal(true).optional(),
    polarity,
  }),
  z.strictObject({
    kind: z.literal('metal'),
    ...said,
    metal: z.enum(['gold', 'silver', 'brass', 'zinc']),
    /** Through and through, not plated or of that tone; a zinc alloy is never said so. */
    solid: z.boolean(),
    /** The part that it is said of, as the seller names it, in small letters. */
    of: z.string().nullable(),
    polarity,
  }),
  /** What darkens, dulls or yellows with use has not: "pale handles". */
  z.strictObject({ kind: z.literal('fresh-part'), ...said, polarity }),
  /** The piece lay unused. */
  z.strictObject({ kind: z.literal('stored'), ...said, polarity, span: eventDetails.span }),
  /** Said of nothing that could be told: shown with the words around it, and judging nothing. */
  z.strictObject({ kind: z.literal('not-placed'), ...said, of: z.enum(['date', 'material', 'code', 'measure']) }),
  z.strictObject({ kind: z.literal('age-word'), ...said, word: z.enum(['vintage', 'antique']), polarity }),
]);
export type Claim = z.infer<typeof claimSchema>;
export type ClaimOf<K extends Claim['kind']> = Extract<Claim, { kind: K }>;
