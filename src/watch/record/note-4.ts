import * as z from 'zod';
import { correction2 } from './correction-2';
import { anyMoment1, digest1, found1, moment1, otherNote1, status1, webAddress1 } from './forms-1';
import { price2 } from './listing-2';

export const seen4 = z.strictObject({
  look: digest1,
  readAt: anyMoment1,
  judgedAt: anyMoment1,
  /** What the buyer set right in it, set aside and chose. */
  corrections: z.array(correction2).max(500),
  /** Pictures kept of its photos; `lineId` is null for a whole photo. */
  pictures: z.array(z.strictObject({ photoId: z.string(), lineId: z.string().nullable(), picture: digest1 })).max(60),
});

/** What a list shows of the latest look, as it was judged then. */
export const shown4 = z.strictObject({
  address: webAddress1,
  price: price2.nullable(),
  face: digest1.nullable(),
  head: z.strictObject({
    against: z.array(found1),
    open: z.array(found1),
    /** Whether the buyer set aside something that speaks against the piece. */
    aside: z.boolean(),
    notLookedAt: z.strictObject({
      photos: z.array(z.number()),
      failed: z.array(z.string()),
      withoutFile: z.string().nullable(),
      reasons: z.array(z.strictObject({ reason: z.string(), data: z.record(z.string(), z.json()) })),
    }),
  }),
});

/** What the buyer did about one listing, and the names of the looks at it. The looks themselves never change. */
export const note4 = z.strictObject({
  version: z.literal(4),
  id: z.string().min(1).max(80),
  title: z.string().max(500),
  savedAt: moment1,
  changedAt: moment1,
  status: status1,
  note: z.string().max(20_000),
  otherNotes: z.array(otherNote1).max(20),
  shown: shown4,
  /** Latest first. */
  looks: z.array(seen4).min(1).max(21),
  removedAt: moment1.nullable(),
});
