import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';

export const authorshipPlain = defineCheck({
  id: 'authorship-plain',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.string() }),
  needs: { claims: ['hedged-authorship'] },
  run: ({ claims }) =>
    claims['hedged-authorship'].map((claim) => ({
      kind: 'doubt' as const,
      key: claim.id,
      data: { words: claim.words },
      claims: [claim.id],
      asks: [askFor('authorship', {})],
    })),
});
