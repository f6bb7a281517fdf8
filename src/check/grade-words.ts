import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { copyGradeWords } from './text-words';
import { listingText, statedWords } from './words';

export const gradeWords = defineCheck({
  id: 'grade-words',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const found = [...new Set(statedWords(listingText(listing), copyGradeWords))];
    if (found.length === 0) return [];
    return [{ kind: 'doubt', data: { words: found.slice(0, 3) }, asks: [askFor('authorship', {})] }];
  },
});
