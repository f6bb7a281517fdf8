import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { leatherWords, notLeatherWords } from './material-words';
import { firstWords, listingText } from './words';

export const leatherWordsAgree = defineCheck({
  id: 'leather-words-agree',
  family: 'materials',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ leather: z.string(), other: z.string() }),
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const text = listingText(listing);
    const leather = firstWords(text, leatherWords);
    const other = firstWords(text, notLeatherWords);
    if (!leather || !other) return [];
    return [{ kind: 'doubt', data: { leather, other }, asks: [askFor('leather', {})] }];
  },
});
