import * as z from 'zod';
import { whereSchema } from '../observation-types';

/** What can be measured at a mark. */
export const measurable = [
  'repeat-x',
  'repeat-y',
  'mirror-off',
  'edges-off',
  'motif-off',
  'back',
  'seam-off',
  'count',
  'pitch',
  'evenness',
  'slant',
  'skipped',
  'lab',
  'difference',
] as const;
export type Measurable = (typeof measurable)[number];

const pair = z.tuple([z.number(), z.number()]);
const point = z
  .union([pair, z.strictObject({ x: z.number(), y: z.number() })], {
    error: 'expected [x, y] or {"x", "y"}, two numbers',
  })
  .transform((given) => (Array.isArray(given) ? { x: given[0], y: given[1] } : given));

/**
 * A mark of a hand on a photo: points in its pixels, the centre of the first pixel being (0.5, 0.5). What else stands
 * beside them, a note or a name, is left alone.
 */
export const markSchema = z.object({
  /** `white` measures nothing: it says which place of the photo is a white card or another white object. */
  what: z.enum([...measurable, 'white']),
  points: z.array(point).min(1).max(64),
  /** Half-width within which a hand set each point in 95 of 100 cases, pixels; 1.5% of the photo's longer side unless said. */
  within: z.number().nonnegative().optional(),
});
export type Mark = z.infer<typeof markSchema>;

/** Why a mark gave no value. */
export type NotMeasured =
  | 'points'
  | 'outside'
  | 'corners'
  | 'loose'
  | 'flat'
  | 'small'
  | 'blurred'
  | 'no-stitches'
  | 'not-each'
  | 'no-repeat'
  | 'no-axis'
  | 'staggered'
  | 'either-axis'
  | 'alike-both-ways'
  | 'not-the-same-pattern'
  | 'no-white'
  | 'clipped'
  | 'uneven';

export const measureSchema = z.strictObject({
  what: z.enum(measurable),
  /** Null: not measured. `lab` has L, a and b; `back` is `turned` or `upright`. */
  value: z.union([z.number(), z.enum(['turned', 'upright']), z.tuple([z.number(), z.number(), z.number()]), z.null()]),
  /** Half-width within which the true value lies in 95 of 100 cases; null where nothing was measured, or for a word. */
  uncertainty: z.number().nonnegative().nullable(),
  /** `share`: of the repeat (`mirror-off`, `edges-off`, `motif-off`, `seam-off`) or of the pitch (`evenness`). `de2000`: steps of CIEDE2000. */
  unit: z.enum(['px', 'share', 'stitch', 'degree', 'de2000']).nullable(),
  /** Where it was measured, after the marks' ends and corners went to the holes and edges that they were set near. */
  where: whereSchema.nullable(),
  /** Why there is no value. */
  why: z.custom<NotMeasured>((given) => typeof given === 'string').optional(),
});
export type Measure = z.infer<typeof measureSchema>;
