import * as z from 'zod';
import { claimSchema } from '../claim/types';
import { priceSchema } from '../listing/types';
import { sourceSchema } from '../source';

export const findingKindSchema = z.enum(['contradiction', 'doubt', 'gap', 'agreement']);
export type FindingKind = z.infer<typeof findingKindSchema>;

/** What to ask the seller so that a finding is settled. `topic` merges asks of several findings into one question. */
export const askSchema = z.strictObject({ topic: z.string(), wants: z.enum(['photo', 'fact']), words: z.string() });
export type Ask = z.infer<typeof askSchema>;

export const findingSchema = z.strictObject({
  id: z.string(),
  check: z.string(),
  kind: findingKindSchema,
  /** One sentence: what stands against what, or what is missing. */
  statement: z.string(),
  basis: z.array(z.string()),
  innocent: z.string(),
  settles: z.string(),
  source: sourceSchema,
  evidence: z.array(z.string()),
  photos: z.array(z.string()),
  claims: z.array(z.string()),
  asks: z.array(askSchema),
});
export type Finding = z.infer<typeof findingSchema>;

export const outcomeSchema = z.discriminatedUnion('outcome', [
  z.strictObject({ outcome: z.literal('speaks'), check: z.string(), findings: z.array(findingSchema).min(1) }),
  z.strictObject({ outcome: z.literal('silent'), check: z.string() }),
  z.strictObject({ outcome: z.literal('not-applicable'), check: z.string(), why: z.string() }),
  z.strictObject({ outcome: z.literal('cannot-tell'), check: z.string(), why: z.string() }),
  /** The check itself broke: a fault of the tool, which says nothing of the listing. `why` is its message. */
  z.strictObject({ outcome: z.literal('failed'), check: z.string(), why: z.string() }),
]);
export type Outcome = z.infer<typeof outcomeSchema>;

/** What checks on changes compare with: the part of an earlier look that matters, small enough to keep in a case. */
export const previousLookSchema = z.strictObject({
  readAt: z.string(),
  title: z.string().nullable(),
  price: priceSchema.nullable(),
  seller: z.string().nullable(),
  photos: z.array(z.strictObject({ id: z.string(), url: z.string() })),
  claims: z.array(claimSchema),
});
export type PreviousLook = z.infer<typeof previousLookSchema>;
