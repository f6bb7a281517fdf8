import * as z from 'zod';

/** A partial ISO date: `YYYY`, `YYYY-MM` or `YYYY-MM-DD`. */
export const partialDate = z.string().regex(/^\d{4}(-\d{2}(-\d{2})?)?$/, 'a date as 1994, 1994-03 or 1994-03-21');

/** `[first, last]`, both included; `null` as its last member means "still". */
export const period = z.tuple([partialDate, partialDate.nullable()]);
export type Period = z.infer<typeof period>;
