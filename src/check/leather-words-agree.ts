import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { qualitiesOf } from './qualities';

export const leatherWordsAgree = defineCheck({
  id: 'leather-words-agree',
  family: 'materials',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ leather: z.string(), other: z.string() }),
  needs: { evidence: true, pairs: true },
  run({ evidence, pairOf }) {
    const others = qualitiesOf(evidence, 'imitation');
    for (const leather of qualitiesOf(evidence, 'leather')) {
      const other = others.find(({ id }) => pairOf('leather-imitation', leather.id, id)?.relation === 'conflicts');
      if (!other) continue;
      const data = { leather: leather.says.words, other: other.says.words };
      const claims = [...leather.claims, ...other.claims];
      return [{ kind: 'doubt', data, claims, evidence: [leather.id, other.id], asks: [askFor('leather', {})] }];
    }
    return [];
  },
});
