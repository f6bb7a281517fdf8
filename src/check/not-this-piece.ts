import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { notThisPieceWords } from './text-words';
import { listingText, statedWords } from './words';

export const notThisPiece = defineCheck({
  id: 'not-this-piece',
  family: 'photos',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const found = [...new Set(statedWords(listingText(listing), notThisPieceWords))];
    if (found.length === 0) return [];
    return [{ kind: 'doubt', data: { words: found.slice(0, 3) }, asks: [askFor('own-photo', {})] }];
  },
});
