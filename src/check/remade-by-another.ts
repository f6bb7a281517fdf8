import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { firstOf, saidOf } from './said-claims';

export const remadeByAnother = defineCheck({
  id: 'remade-by-another',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { claims: ['remade'] },
  run({ claims }) {
    const said = saidOf(claims.remade);
    if (said.length === 0) return [];
    return [{ kind: 'doubt', ...firstOf(said), asks: [askFor('remade-by', {})] }];
  },
});
