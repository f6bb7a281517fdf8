import * as z from 'zod';
import { moment1 } from './forms-1';
import { note5 } from './note-5';

/** When the piece was made, by something else than its code: with the code, an example of how its maker wrote dates. */
export const dated6 = z.strictObject({
  /** As an example of a maker file says it: a date, and a place where one is known. */
  reads: z.string().min(1).max(200),
  by: z.enum(['receipt', 'answer', 'own', 'elsewhere']),
  /** The maker as the listing names it, and the code as it was read; either is empty where nobody knows it. */
  maker: z.string().max(120),
  code: z.string().max(60),
  at: moment1,
});

/** As the form before, and with the date that is settled otherwise; null where none is. */
export const note6 = z.strictObject({ ...note5.shape, version: z.literal(6), dated: dated6.nullable() });
