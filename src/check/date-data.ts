import * as z from 'zod';
import type { MarkRead } from '../mark/types';
import { spanSchema } from '../span/types';
import { photoNumber } from './types';

/** A date that somebody states: the words, and what they mean. */
export const claimedDateSchema = z.strictObject({ words: z.string(), span: spanSchema });
export type ClaimedDate = z.infer<typeof claimedDateSchema>;

/** A public mark as a sentence names it, with what it says of the date. `photo` counts where it was seen in one. */
export const datedMarkSchema = z.strictObject({
  inText: z.boolean(),
  photo: photoNumber,
  words: z.string(),
  verified: z.boolean(),
  spans: z.array(spanSchema),
});
export type DatedMark = z.infer<typeof datedMarkSchema>;

export const datedMark = (mark: MarkRead, number: (photoId: string) => number | null): DatedMark => ({
  inText: mark.photoId === null,
  photo: mark.photoId === null ? null : number(mark.photoId),
  words: mark.words,
  verified: mark.verified,
  spans: mark.spans,
});

export const claimedDate = ({ words, span }: ClaimedDate): ClaimedDate => ({ words, span });
