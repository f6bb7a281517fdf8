import * as z from 'zod';

export const questionSchema = z.strictObject({
  id: z.string(),
  wants: z.enum(['photo', 'fact']),
  words: z.string(),
  /** Ids of the findings that an answer settles. */
  settles: z.array(z.string()),
});
export type Question = z.infer<typeof questionSchema>;
