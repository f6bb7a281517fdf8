import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { firstOf, saidOf } from './said-claims';

export const readyMadeAssurance = defineCheck({
  id: 'ready-made-assurance',
  family: 'text',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ words: z.array(z.string()) }),
  needs: { claims: ['assurance'] },
  run({ claims }) {
    const said = saidOf(claims.assurance);
    if (said.length === 0) return [];
    return [{ kind: 'gap', ...firstOf(said), asks: [askFor('assurance', {})] }];
  },
});
