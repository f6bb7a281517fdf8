import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { hurryWords } from './text-words';
import { allWords, listingText } from './words';

export const pressureWords = defineCheck({
  id: 'pressure-words',
  family: 'seller',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const found = [...new Set(allWords(listingText(listing), hurryWords))];
    if (found.length === 0) return [];
    return [{ kind: 'doubt', data: { words: found.slice(0, 3) }, asks: [askFor('payment', {})] }];
  },
});
