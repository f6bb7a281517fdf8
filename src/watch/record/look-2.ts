import * as z from 'zod';
import { anyMoment1, digest1, found1, moment1 } from './forms-1';
import { listing2 } from './listing-2';
import { photoRead2 } from './photo-read-2';

/**
 * What was there at one time: the page, what was read in its photos, and what the seller had replied by then. It never
 * changes; its name is the SHA-256 of its JSON text. `judged` says what was found then and by which rules: for
 * comparison, not as truth.
 */
export const look2 = z.strictObject({
  version: z.literal(2),
  listing: listing2,
  photos: z.array(photoRead2),
  /** The seller's replies as the buyer pasted them, the first first. */
  replies: z.array(z.strictObject({ at: moment1, text: z.string().min(1).max(20_000) })).max(50),
  judged: z.strictObject({
    at: anyMoment1,
    /** Version of the program; null where it was not written down. */
    rules: z.string().max(40).nullable(),
    /** The maker's file that was used, by name and SHA-256; null where none fitted. */
    maker: z.strictObject({ name: z.string(), file: digest1.nullable() }).nullable(),
    found: z.array(found1),
  }),
});
