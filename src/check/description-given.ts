import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';

/** A description of fewer characters says little. Common practice, no source. */
const shortest = 40;

export const descriptionGiven = defineCheck({
  id: 'description-given',
  family: 'text',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ characters: z.number() }),
  limits: { shortest },
  needs: { listing: ['description', 'text'] },
  run({ listing }) {
    const words = listing.description[0]?.value.trim() ?? '';
    if (words.length >= shortest) return [];
    return [{ kind: 'gap', data: { characters: words.length }, asks: [askFor('description', {})] }];
  },
});
