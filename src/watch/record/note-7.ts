import * as z from 'zod';
import { correction3 } from './correction-3';
import { seen4 } from './note-4';
import { note6 } from './note-6';

const seen7 = z.strictObject({ ...seen4.shape, corrections: z.array(correction3).max(500) });

/** As the form before; what the buyer set right may be a mark on a photo. */
export const note7 = z.strictObject({
  ...note6.shape,
  version: z.literal(7),
  /** Latest first. */
  looks: z.array(seen7).min(1).max(21),
});
