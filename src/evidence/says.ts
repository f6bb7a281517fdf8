import * as z from 'zod';
import { claimPlaceSchema } from '../claim/types';
import { priceSchema } from '../listing/types';
import { markSaysSchema } from '../mark/types';
import { spanSchema } from '../span/types';

/** Whose words a statement is, and the words. */
const by = { field: claimPlaceSchema.shape.field, words: z.string() };

/**
 * What evidence of date and place states, beside its dates and places: what its sentence is made of. The sentence itself
 * stands with the languages.
 */
export const saysSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('made'), ...by }),
  z.strictObject({ kind: z.literal('bought'), ...by }),
  z.strictObject({ kind: z.literal('origin'), ...by }),
  /** The country that the words name existed in these days. */
  z.strictObject({ kind: z.literal('country'), ...by, place: z.string() }),
  z.strictObject({
    kind: z.literal('code'),
    from: z.enum(['photo', 'typed', 'claim']),
    code: z.string(),
    /** By what it is read where that is not the stated maker's own file: a file, or (null) the shape of a code alone. */
    by: z.array(z.strictObject({ maker: z.string().nullable(), invented: z.boolean() })),
  }),
  z.strictObject({ kind: z.literal('system'), code: z.string() }),
  z.strictObject({ kind: z.literal('plant'), plants: z.array(z.string()) }),
  z.strictObject({ kind: z.literal('mark'), inText: z.boolean(), words: z.string(), tells: markSaysSchema }),
  z.strictObject({
    kind: z.literal('material'),
    ...by,
    maker: z.string(),
    /** As the file names it: also one that no listing is sorted by. */
    part: z.string(),
    is: z.array(z.string()),
  }),
  /** In these years the maker used others for the part, and not what the words name. */
  z.strictObject({
    kind: z.literal('other-material'),
    ...by,
    maker: z.string(),
    /** As the file names it: also one that no listing is sorted by. */
    part: z.string(),
    is: z.array(z.string()),
    used: z.array(spanSchema),
  }),
  z.strictObject({ kind: z.literal('model'), ...by, maker: z.string(), model: z.string() }),
]);
export type Says = z.infer<typeof saysSchema>;

/** What is stated of an age, or of a time that is not that of the making. */
export const ageSaysSchema = z.discriminatedUnion('kind', [
  /** The day on which the listing was looked at. */
  z.strictObject({ kind: z.literal('today'), day: z.string() }),
  /** The day itself on which it is said to be bought. */
  z.strictObject({ kind: z.literal('purchase-day'), ...by }),
  z.strictObject({ kind: z.literal('age-word'), ...by, word: z.enum(['vintage', 'antique']) }),
  /** What darkens or dulls with the years has not. */
  z.strictObject({ kind: z.literal('fresh'), ...by }),
  /** When the maker used what a part is of that the seller says is another one now. */
  z.strictObject({
    kind: z.literal('later-material'),
    ...by,
    maker: z.string(),
    /** As the file names it. */
    part: z.string(),
    is: z.array(z.string()),
    used: z.array(spanSchema),
    /** What the words name is not of these years, but of others. */
    other: z.boolean(),
  }),
  /** When the maker stamped, by its file. */
  z.strictObject({ kind: z.literal('stamping'), maker: z.string() }),
  /** The piece carries a code, so the maker had begun to stamp. */
  z.strictObject({ kind: z.literal('stamped'), code: z.string(), maker: z.string() }),
]);

export const bagSideSchema = z.enum(['width', 'height', 'depth']);
export type BagSide = z.infer<typeof bagSideSchema>;
const sizeSideSchema = z.enum([...bagSideSchema.options, 'strap']);
export type SizeSide = z.infer<typeof sizeSideSchema>;
const lengthSchema = z.strictObject({ side: bagSideSchema, mm: z.number() });

export const sizeSaysSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('size'),
    side: sizeSideSchema,
    mm: z.number(),
    /** Half of the last step that is stated. */
    precisionMm: z.number(),
    words: z.string(),
  }),
  /** `made`: the years of this size, where the file gives them. */
  z.strictObject({
    kind: z.literal('model-size'),
    ...lengthSchema.shape,
    model: z.string(),
    made: spanSchema.optional(),
  }),
  /** The number in a model's name, taken for its width in centimetres. */
  z.strictObject({ kind: z.literal('named-width'), name: z.string(), number: z.number() }),
]);

export type SizeSays = z.infer<typeof sizeSaysSchema>;

const axis = z.tuple([z.number(), z.number()]);
/** On which part, as the file names it, what was measured at the mark of a photo. */
export const measuredNumberSchema = z.strictObject({
  kind: z.literal('measured-number'),
  photo: z.string(),
  mark: z.number().int(),
  on: z.string(),
  part: z.string(),
  /** `within`: the half-width that holds in 95 of 100 cases, of a colour in steps of CIEDE2000. */
  is: z.discriminatedUnion('of', [
    z.strictObject({ of: z.enum(['stitches', 'stitch-pitch']), value: z.number(), within: z.number() }),
    z.strictObject({
      of: z.literal('colour'),
      lab: z.tuple([z.number(), z.number(), z.number()]),
      within: z.number(),
    }),
  ]),
});
export type MeasuredNumberSays = z.infer<typeof measuredNumberSchema>;
export const fileNumberSchema = z.strictObject({
  kind: z.literal('file-number'),
  maker: z.string(),
  part: z.string(),
  is: z.discriminatedUnion('of', [
    z.strictObject({
      of: z.enum(['stitches', 'stitch-pitch', 'pattern-repeat']),
      least: z.number(),
      most: z.number(),
    }),
    z.strictObject({ of: z.literal('colour'), lightness: axis, greenRed: axis, blueYellow: axis }),
  ]),
});
export type FileNumberSays = z.infer<typeof fileNumberSchema>;

export const valueSaysSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('proportion'), one: lengthSchema, other: lengthSchema }),
  /** The least and the greatest that sizes of one family have. */
  z.strictObject({
    kind: z.literal('family-proportion'),
    models: z.array(z.string()),
    least: z.number(),
    most: z.number(),
  }),
  measuredNumberSchema,
  fileNumberSchema,
]);

const quoted = { words: z.string() };
const metalSchema = z.enum(['gold', 'silver', 'brass', 'zinc']);
const ofPart = { ...quoted, of: z.string().nullable() };

/** What a mark on a photo shows of age or use, against a place that shows none; `by` and its half-width are steps of CIELAB. */
export const ageShownSchema = z.strictObject({
  kind: z.literal('shows-age'),
  photo: z.string(),
  mark: z.number().int(),
  /** Leather that lay open and is darker, a rivet's edge that is greener, plating that is another colour where it is touched. */
  place: z.enum(['open-leather', 'rivet', 'touched']),
  by: z.number(),
  within: z.number(),
});
export type AgeShownSays = z.infer<typeof ageShownSchema>;

export const qualitySaysSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('called-new'), ...quoted, inData: z.boolean() }),
  /** For the whole piece, or a sign of wear. */
  z.strictObject({ kind: z.literal('called-used'), ...quoted }),
  ageShownSchema,
  /** Of the part, null for the piece. */
  z.strictObject({ kind: z.literal('leather'), ...ofPart }),
  z.strictObject({ kind: z.literal('imitation'), ...ofPart }),
  /** Of the part as the listing names it; null for metal of which it names no part. */
  z.strictObject({ kind: z.literal('solid-metal'), ...ofPart, metal: metalSchema }),
  z.strictObject({ kind: z.literal('other-metal'), ...ofPart, metal: metalSchema }),
  z.strictObject({ kind: z.literal('maker-name'), maker: z.string() }),
  z.strictObject({ kind: z.literal('shown-code'), code: z.string() }),
  z.strictObject({ kind: z.literal('quoted-code'), code: z.string() }),
]);

export const priceSaysSchema = z.discriminatedUnion('kind', [
  /** As the page shows it, and as its data give it. */
  z.strictObject({ kind: z.literal('price-shown'), price: priceSchema }),
  z.strictObject({ kind: z.literal('price-in-data'), price: priceSchema }),
  z.strictObject({ kind: z.literal('price-before'), price: priceSchema }),
  /** What is asked, against which an earlier price stands. */
  z.strictObject({ kind: z.literal('price-now'), price: priceSchema }),
  /** What is asked for a piece that is called new, and for any other. */
  z.strictObject({ kind: z.literal('asked-new'), price: priceSchema }),
  z.strictObject({ kind: z.literal('asked-used'), price: priceSchema }),
  /**
   * A maker's smallest new price of one year, of the model where it says which; `then`: of the time of this piece;
   * `like`: what a piece in this condition costs at least.
   */
  z.strictObject({
    kind: z.enum(['floor', 'floor-then', 'floor-like']),
    maker: z.string(),
    amount: z.number(),
    currency: z.string(),
    year: z.number(),
    model: z.string().optional(),
  }),
]);
