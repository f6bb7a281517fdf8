import * as z from 'zod';
import { handMeasureSchema } from '../photo/measure/hand/hand-types';

/** One thing that the buyer measured on a photo of the case. */
export const measuredByHandSchema = z.strictObject({
  ...handMeasureSchema.pick({ what: true, uncertainty: true, unit: true }).shape,
  /** The photo's id and the mark; the same when the photo is read again. */
  id: z.string(),
  photoId: z.string(),
  /** The mark's number on its photo. */
  mark: z.number().int(),
  /** What the mark lies on, in the buyer's words; may be empty. */
  on: z.string(),
  /** A number, a word, or L, a and b of a colour. */
  value: z.union([z.number(), z.enum(['turned', 'upright']), z.tuple([z.number(), z.number(), z.number()])]),
  /** In shares of the photo's sides. */
  where: handMeasureSchema.shape.where,
  by: z.literal('hand'),
});
export type CaseObservation = z.infer<typeof measuredByHandSchema>;
