import * as z from 'zod';
import { askSchema } from '../check/types';

export const questionSchema = z.strictObject({
  id: z.string(),
  wants: z.enum(['photo', 'fact']),
  /** What is asked, each once; the sentences are made when it is shown. */
  asks: z.array(askSchema).min(1),
  /** Ids of the findings that an answer settles. */
  settles: z.array(z.string()),
});
export type Question = z.infer<typeof questionSchema>;
