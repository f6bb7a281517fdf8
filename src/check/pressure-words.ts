import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { firstOf } from './said-claims';

export const pressureWords = defineCheck({
  id: 'pressure-words',
  family: 'seller',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { claims: ['hurry'] },
  run({ claims }) {
    const said = claims.hurry;
    if (said.length === 0) return [];
    return [{ kind: 'doubt', ...firstOf(said), asks: [askFor('payment', {})] }];
  },
});
