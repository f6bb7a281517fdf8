import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { assuranceWords } from './text-words';
import { allWords, listingText } from './words';

export const readyMadeAssurance = defineCheck({
  id: 'ready-made-assurance',
  family: 'text',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const found = [...new Set(allWords(listingText(listing), assuranceWords))];
    if (found.length === 0) return [];
    return [{ kind: 'gap', data: { words: found.slice(0, 3) }, asks: [askFor('assurance', {})] }];
  },
});
