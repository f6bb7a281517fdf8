import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { qualitiesOf } from './qualities';

export const metalWordsAgree = defineCheck({
  id: 'metal-words-agree',
  family: 'materials',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({
    solid: z.string(),
    other: z.string(),
    /** As the listing names it; null for metal of which it names no part. */
    part: z.string().nullable(),
  }),
  needs: { evidence: true, pairs: true },
  run({ evidence, pairOf }) {
    const others = qualitiesOf(evidence, 'other-metal');
    const told = qualitiesOf(evidence, 'solid-metal').flatMap((solid) => {
      const other = others.find(({ id }) => pairOf('solid-metal', solid.id, id)?.relation === 'conflicts');
      return other ? [{ solid, other }] : [];
    });
    // Once for each metal, whatever parts are of it.
    return (['gold', 'silver', 'brass'] as const).flatMap((metal) => {
      const found = told.find(({ solid }) => solid.says.metal === metal);
      if (!found) return [];
      const { solid, other } = found;
      return [
        {
          kind: 'doubt' as const,
          key: solid.says.words.toLowerCase(),
          data: { solid: solid.says.words, other: other.says.words, part: solid.says.of },
          claims: [...solid.claims, ...other.claims],
          evidence: [solid.id, other.id],
          asks: [askFor('worn-metal', {})],
        },
      ];
    });
  },
});
