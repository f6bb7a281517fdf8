import * as z from 'zod';
import { outcomeSchema, previousLookSchema } from '../check/types';
import { claimSchema } from '../claim/types';
import { decodingSchema } from '../code/types';
import { reasoningSchema } from '../evidence/reasoning-types';
import { evidenceSchema } from '../evidence/types';
import { listingSchema } from '../listing/types';
import { markReadSchema } from '../mark/types';
import { problemSchema } from '../problem/schema';
import { questionSchema } from '../question/types';
import { photoReadSchema } from '../stamp/types';
import { correctionSchema, mostCorrections } from './correction-types';
import { measuredByHandSchema } from './measured-types';

/** What the seller replied, as the buyer pasted it, and when. */
export const replySchema = z.strictObject({
  at: z.iso.datetime({ error: 'no date and time' }),
  text: z.string().min(1).max(20_000),
});
export type Reply = z.infer<typeof replySchema>;

/**
 * A photo of the piece that no page shows, as the buyer says where it came from and on which day. It stands in the case's
 * listing after the page's own; `id` begins with `sent-` and is told by the file's bytes.
 */
export const sentPhotoSchema = z.strictObject({
  id: z.string().regex(/^sent-[0-9a-f]{16,64}$/),
  from: z.enum(['seller-chat', 'seller-mail', 'own']),
  on: z.iso.date(),
});
export type SentPhoto = z.infer<typeof sentPhotoSchema>;
/** More are never sent of one piece. */
export const mostSentPhotos = 40;

/**
 * One listing with everything read and found. It can be written to disk, read back and recomputed: all that the
 * pipeline needs after the page and the photos were read is `listing`, `photos`, `replies`, `corrections` and the maker files.
 */
export const caseSchema = z.strictObject({
  format: z.literal(1),
  listing: listingSchema,
  photos: z.array(photoReadSchema),
  /** What the buyer set right, added or struck; what stands in `photos` is as it was read. */
  corrections: z.array(correctionSchema).max(mostCorrections),
  /** The seller's replies, the first first; absent where none was kept. */
  replies: z.array(replySchema).max(50).optional(),
  /** Photos that came another way than by the page; absent where there are none. */
  sent: z.array(sentPhotoSchema).max(mostSentPhotos).optional(),
  /** Moment at which it was judged, ISO 8601; `listing.readAt` when missing. */
  judgedAt: z.iso.datetime({ error: 'no date and time' }).optional(),
  /** The look before this one, which checks on changes compare with. */
  previous: previousLookSchema.optional(),
  /** Name of the maker whose file was used, null when no file fits. */
  maker: z.string().nullable(),
  /** Whether that file is invented, for demonstration; the screen says so. */
  makerInvented: z.literal(true).optional(),
  claims: z.array(claimSchema),
  /** Where several pieces are on offer. */
  lot: z
    .strictObject({
      /** What of the title says so. */
      words: z.string(),
      /** As the seller calls each; none where only their number is said. */
      pieces: z.array(z.string()),
      /** The piece that the buyer chose. */
      chosen: z.string().nullable(),
      /** Claims that count, by their ids: of the sale, of all pieces, and of the chosen one. */
      judging: z.array(z.string()),
      /** Claims of which it is not plain whose they are. */
      notPlaced: z.array(z.string()),
    })
    .optional(),
  decodings: z.array(decodingSchema),
  marks: z.array(markReadSchema),
  evidence: z.array(evidenceSchema),
  reasoning: reasoningSchema.optional(),
  outcomes: z.array(outcomeSchema),
  questions: z.array(questionSchema),
  /** What the buyer measured on photos; absent where nothing was. */
  observations: z.array(measuredByHandSchema).optional(),
  summary: z.strictObject({
    contradictions: z.number().int(),
    doubts: z.number().int(),
    gaps: z.number().int(),
    agreements: z.number().int(),
  }),
  /** What was not read or not done, and why. */
  skipped: z.array(problemSchema),
});
export type Case = z.infer<typeof caseSchema>;
export type CaseLot = NonNullable<Case['lot']>;
