import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidOf } from './said-claims';

export const leatherWordsAgree = defineCheck({
  id: 'leather-words-agree',
  family: 'materials',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ leather: z.string(), other: z.string() }),
  needs: { claims: ['leather'] },
  run({ claims }) {
    const said = saidOf(claims.leather);
    const leather = said.find(({ real }) => real);
    const other = said.find(({ real }) => !real);
    if (!leather || !other) return [];
    const data = { leather: leather.words, other: other.words };
    return [{ kind: 'doubt', data, claims: [leather.id, other.id], asks: [askFor('leather', {})] }];
  },
});
