import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { sides, statedSide } from './sizes';

export const measuresStated = defineCheck({
  id: 'measures-stated',
  family: 'size',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({}),
  needs: { facts: ['sides'] },
  run({ fact }) {
    if (sides.some((side) => statedSide(fact.sides, side))) return [];
    return [{ kind: 'gap', data: {}, asks: [askFor('measures', {})] }];
  },
});
