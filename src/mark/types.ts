import * as z from 'zod';
import { documentSchema, strengthSchema } from '../source';
import { spanSchema } from '../span/types';
import { markCautionSchema, markSaysSchema } from './says';

export { markSaysSchema };

/** A public mark found in text: what it is, the words, and what it says of date and place. */
export const markReadSchema = z.strictObject({
  id: z.string(),
  mark: z.string(),
  words: z.string(),
  foundIn: z.enum(['listing', 'photo']),
  photoId: z.string().nullable(),
  /** All candidate spans; empty when the mark dates nothing by itself. */
  spans: z.array(spanSchema),
  places: z.array(z.string()),
  strength: strengthSchema,
  verified: z.boolean(),
  source: documentSchema,
  says: markSaysSchema,
  /** What it cannot settle; empty where nothing is to be said. */
  cautions: z.array(markCautionSchema),
});
export type MarkRead = z.infer<typeof markReadSchema>;
