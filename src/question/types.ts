import * as z from 'zod';
import { liftQuestion } from '../check/older-types';
import { askSchema } from '../check/types';

const questionForm = z.strictObject({
  id: z.string(),
  wants: z.enum(['photo', 'fact']),
  /** What is asked, each once; the sentences are made when it is shown. */
  asks: z.array(askSchema).min(1),
  /** Ids of the findings that an answer settles. */
  settles: z.array(z.string()),
});
export const questionSchema = z.preprocess(liftQuestion, questionForm);
export type Question = z.infer<typeof questionForm>;
