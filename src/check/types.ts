import * as z from 'zod';
import { claimSchema } from '../claim/types';
import { photoAddressSchema, priceSchema } from '../listing/types';
import { sourceSchema } from '../source';

export const findingKindSchema = z.enum(['contradiction', 'doubt', 'gap', 'agreement']);
export type FindingKind = z.infer<typeof findingKindSchema>;

/** What a sentence is made with: JSON-safe, by the names that the words of a language expect. */
export const sentenceDataSchema = z.record(z.string(), z.json());
export type SentenceData = z.infer<typeof sentenceDataSchema>;

/** What somebody says of a piece; `inData` where only the page's data say it. */
export const saidSchema = z.strictObject({ words: z.string(), inData: z.boolean() });

/** A photo's place on the page, from 1; null for one that the page does not list. */
export const photoNumber = z.number().nullable();

/**
 * What to ask the seller so that a finding is settled: which question, and what it is made with. `topic` merges asks of
 * several findings into one question.
 */
export const askSchema = z.strictObject({
  ask: z.string(),
  topic: z.string(),
  wants: z.enum(['photo', 'fact']),
  data: sentenceDataSchema,
});
export type Ask = z.infer<typeof askSchema>;

/** Why a check has nothing to say; the words stand with the languages. */
export const reasonSchema = z.strictObject({ reason: z.string(), data: sentenceDataSchema });
export type Reason = z.infer<typeof reasonSchema>;

/** What a check found: a kind and data. Its sentences are made when it is shown. */
export const findingSchema = z.strictObject({
  id: z.string(),
  check: z.string(),
  kind: findingKindSchema,
  data: sentenceDataSchema,
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
  z.strictObject({
    outcome: z.literal('not-applicable'),
    check: z.string(),
    why: reasonSchema,
  }),
  z.strictObject({ outcome: z.literal('cannot-tell'), check: z.string(), why: reasonSchema }),
  /** The check itself broke: a fault of the tool, which says nothing of the listing. `why` is its message. */
  z.strictObject({ outcome: z.literal('failed'), check: z.string(), why: z.string() }),
]);
export type Outcome = z.infer<typeof outcomeSchema>;

/** What checks on changes compare with: the part of an earlier look that matters, small enough to keep in a case. */
export const previousLookSchema = z.strictObject({
  readAt: z.iso.datetime({ error: 'no date and time' }),
  title: z.string().nullable(),
  /** Absent in cases kept before it was compared. */
  description: z.string().nullable().optional(),
  price: priceSchema.nullable(),
  seller: z.string().nullable(),
  photos: z.array(z.strictObject({ id: z.string(), url: photoAddressSchema })),
  claims: z.array(claimSchema),
});
export type PreviousLook = z.infer<typeof previousLookSchema>;
