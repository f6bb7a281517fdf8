import * as z from 'zod';

/** How a photo is looked at by hand. `crop` is in shares of the photo's width and height: left, top, right, bottom. */
export const adjustmentSchema = z.strictObject({
  turn: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]),
  invert: z.boolean(),
  crop: z.tuple([z.number(), z.number(), z.number(), z.number()]).nullable(),
});
export type Adjustment = z.infer<typeof adjustmentSchema>;
export const noAdjustment: Adjustment = { turn: 0, invert: false, crop: null };
