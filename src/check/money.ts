import * as z from 'zod';

/** A maker's smallest new price of one year, in whole units of its currency; of one model where it is named. */
export const floorSchema = z.strictObject({
  amount: z.number(),
  currency: z.string(),
  year: z.number(),
  model: z.string().optional(),
});
