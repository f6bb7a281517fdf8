import * as z from 'zod';

/** A day as ISO 8601 `YYYY-MM-DD`; years 0001 to 9999, proleptic Gregorian. */
export const isoDay = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'a day as YYYY-MM-DD');

export const precision = z.enum(['day', 'week', 'month', 'quarter', 'season', 'year', 'decade', 'range']);
export type Precision = z.infer<typeof precision>;

/**
 * An interval of dates, both ends included; `null` is an open end.
 * `about` says that the writer hedged ("c. 1994"): the ends are soft.
 */
export const spanSchema = z.strictObject({
  from: isoDay.nullable(),
  to: isoDay.nullable(),
  precision,
  about: z.boolean().optional(),
});
export type Span = z.infer<typeof spanSchema>;

/** A partial ISO date: `YYYY`, `YYYY-MM` or `YYYY-MM-DD`. */
export const partialDate = z.string().regex(/^\d{4}(-\d{2}(-\d{2})?)?$/, 'partial-date');

/** A partial date as a maker file gives it: also "about 1994", and "unknown". */
export const fileDate = z.string().regex(/^(about )?\d{4}(-\d{2}(-\d{2})?)?$|^unknown$/, 'file-date');

/** `[first, last]`, both included; `null` as its last member means "still". */
export const period = z.tuple([fileDate, fileDate.nullable()]);
export type Period = z.infer<typeof period>;
