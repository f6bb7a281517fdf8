import * as z from 'zod';
import { whereSchema } from '../../observation-types';
import { measurable, type NotMeasured } from '../measure-types';

/**
 * What a hand may mark on a photo. `panel` is looked at for its pattern, `lettering` for its characters; `back`, `motif` and `seam` are held against the
 * photo's first panel. `white`, `ruler` and `card` serve the others.
 */
export const markKinds = [
  'panel',
  'back',
  'motif',
  'seam',
  'stitches',
  'lettering',
  'patch',
  'open-leather',
  'rivet',
  'touched',
  'white',
  'length',
  'ruler',
  'card',
] as const;
export type MarkKind = (typeof markKinds)[number];

const share = z.number().min(0).max(1);

/** A mark as a hand set it. Its points are in shares of the photo's sides: the same photo may come in another size. */
export const handMarkSchema = z.strictObject({
  /** By which it is called on its photo; it stays with the mark. */
  number: z.number().int().min(1).max(999),
  kind: z.enum(markKinds),
  points: z
    .array(z.strictObject({ x: share, y: share }))
    .min(1)
    .max(24),
  /** Half-width within which a hand set each point in 95 of 100 cases, as a share of the photo's longer side. */
  within: z.number().nonnegative().max(1),
  /** Of a ruler, the length that its points span. */
  mm: z.number().positive().max(10_000).nullable(),
  /** What the mark lies on, in the buyer's words; may be empty. Of lettering the characters themselves. */
  name: z.string().max(60),
});
export type HandMark = z.infer<typeof handMarkSchema>;

/** What is measured at marks of a hand: all that can be measured, and lengths where a scale is known. */
export const measuredByHand = [
  ...measurable,
  'length',
  'width',
  'height',
  'stitches-per-cm',
  'scale',
  'darkening',
  'greening',
  'plating-change',
  'letters',
  'letter-width',
  'letter-gap',
  'letter-stroke',
  'letter-height-change',
  'letter-strength-change',
] as const;
export type MeasuredByHand = (typeof measuredByHand)[number];

/** Why a hand's mark gave no value. */
export type NotMeasuredByHand =
  | NotMeasured
  | 'no-panel'
  | 'no-length'
  | 'no-first-patch'
  | 'no-text'
  | 'not-parted'
  | 'relief';

/** A measure at a mark; `where` is in shares of the photo's sides. */
export const handMeasureSchema = z.strictObject({
  what: z.enum(measuredByHand),
  value: z.union([z.number(), z.enum(['turned', 'upright']), z.tuple([z.number(), z.number(), z.number()]), z.null()]),
  uncertainty: z.number().nonnegative().nullable(),
  unit: z
    .enum([
      'px',
      'share',
      'stitch',
      'degree',
      'de2000',
      'mm',
      'per-cm',
      'mm-per-px',
      'lab-step',
      'letter',
      'of-height',
      'of-width',
      'of-mean',
    ])
    .nullable(),
  where: whereSchema.nullable(),
  /** The number of the mark that it is held against. */
  against: z.number().int().optional(),
  why: z.custom<NotMeasuredByHand>((given) => typeof given === 'string').optional(),
});
export type HandMeasure = z.infer<typeof handMeasureSchema>;
