import * as z from 'zod';
import type { ClaimOf } from '../claim/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidOf } from './said-claims';

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
  needs: { claims: ['metal'] },
  run({ claims }) {
    const said = saidOf(claims.metal);
    return (['gold', 'silver', 'brass'] as const).flatMap((metal) => {
      // What cannot be said of one part at once; of several parts, each may be of its own metal.
      const others = new Map<string | null, ClaimOf<'metal'>>();
      for (const claim of said)
        if (!claim.solid && (claim.metal === metal || claim.metal === 'zinc') && !others.has(claim.of))
          others.set(claim.of, claim);
      const solid = said.find((claim) => claim.solid && claim.metal === metal && others.has(claim.of));
      const other = solid && others.get(solid.of);
      if (!solid || !other) return [];
      return [
        {
          kind: 'doubt' as const,
          key: solid.words.toLowerCase(),
          data: { solid: solid.words, other: other.words, part: solid.of },
          claims: [solid.id, other.id],
          asks: [askFor('worn-metal', {})],
        },
      ];
    });
  },
});
