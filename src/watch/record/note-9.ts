import * as z from 'zod';
import { moment1 } from './forms-1';
import { note8 } from './note-8';

/** As the form before, and when each photo that came another way than by the page was brought or taken out last. */
export const note9 = z.strictObject({
  ...note8.shape,
  version: z.literal(9),
  sentChanges: z.array(z.strictObject({ photoId: z.string().max(80), at: moment1, isRemoved: z.boolean() })).max(200),
});
