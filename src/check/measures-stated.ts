import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';

export const measuresStated = defineCheck({
  id: 'measures-stated',
  family: 'size',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({}),
  needs: { onePiece: true, facts: ['sides'] },
  run({ fact }) {
    if (fact.sides.length > 0) return [];
    return [{ kind: 'gap', data: {}, asks: [askFor('measures', {})] }];
  },
});
