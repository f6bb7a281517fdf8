import * as z from 'zod';
import { correction1 } from './correction-1';
import { anyMoment1, moment1, otherNote1, pixels1, status1, typedCode1 } from './forms-1';
import { listing1 } from './listing-1';
import { listing2 } from './listing-2';
import { photoRead1 } from './photo-read-1';
import { photoRead2 } from './photo-read-2';

/**
 * A case of version 2 as far as it is no conclusion. What was concluded is worked out anew, so that its form does not
 * matter; only what was found is taken over, as far as it can be understood.
 */
const concluded2 = {
  previous: z.unknown().optional(),
  maker: z.string().nullable(),
  makerInvented: z.literal(true).optional(),
  claims: z.array(z.unknown()),
  decodings: z.array(z.unknown()),
  marks: z.array(z.unknown()),
  evidence: z.array(z.unknown()),
  reasoning: z.unknown().optional(),
  outcomes: z.array(z.unknown()),
  questions: z.array(z.unknown()),
  summary: z.unknown(),
  skipped: z.array(z.unknown()),
};

/** One look: the case of one reading of the page, and the pictures kept of it. */
export const look2 = {
  case: z
    .strictObject({
      format: z.literal(1),
      // Both forms were written under this number.
      listing: z.union([listing2, listing1]),
      // Both forms were written under this number, and so were both lists.
      photos: z.array(z.union([photoRead2, photoRead1])),
      typedCodes: z.array(typedCode1).optional(),
      corrections: z.array(correction1).max(500).optional(),
      judgedAt: anyMoment1.optional(),
      ...concluded2,
    })
    .refine(({ typedCodes, corrections }) => typedCodes || corrections, { path: ['corrections'], error: 'missing' }),
  pictures: z.array(z.strictObject({ photoId: z.string(), lineId: z.string().nullable(), picture: pixels1 })).max(60),
};

/** One saved listing with everything in it: looks, note and status. The form of version 2. */
export const case2 = z.strictObject({
  version: z.literal(2),
  id: z.string().min(1).max(80),
  title: z.string().max(500),
  savedAt: moment1,
  changedAt: moment1,
  status: status1,
  note: z.string().max(20_000),
  otherNotes: z.array(otherNote1).max(20),
  ...look2,
  earlier: z.array(z.strictObject(look2)).max(20),
  removedAt: moment1.nullable(),
});
