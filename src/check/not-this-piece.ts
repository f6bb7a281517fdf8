import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { firstOf, saidOf } from './said-claims';

export const notThisPiece = defineCheck({
  id: 'not-this-piece',
  family: 'photos',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { claims: ['not-this-piece'] },
  run({ claims }) {
    const said = saidOf(claims['not-this-piece']);
    if (said.length === 0) return [];
    return [{ kind: 'doubt', ...firstOf(said), asks: [askFor('own-photo', {})] }];
  },
});
