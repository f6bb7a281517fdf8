import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { namedSides, sides, statedSide } from './sizes';

export const measuresStated = defineCheck({
  id: 'measures-stated',
  family: 'size',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({}),
  needs: { claims: ['measure'], listing: ['measures'] },
  run({ claims, listing }) {
    const measures = namedSides(
      listing.measures.map(({ value }) => value),
      claims.measure.map(({ measure }) => measure),
    );
    if (sides.some((side) => statedSide(measures, side))) return [];
    return [{ kind: 'gap', data: {}, asks: [askFor('measures', {})] }];
  },
});
