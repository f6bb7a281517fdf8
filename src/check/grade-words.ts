import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { firstOf, saidOf } from './said-claims';

export const gradeWords = defineCheck({
  id: 'grade-words',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { claims: ['grade-of-copy'] },
  run({ claims }) {
    const said = saidOf(claims['grade-of-copy']);
    if (said.length === 0) return [];
    return [{ kind: 'doubt', ...firstOf(said), asks: [askFor('authorship', {})] }];
  },
});
