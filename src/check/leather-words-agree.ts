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
    // A bag of leather may have a lining that is none: only what is said of the same part, or of the piece, stands against it.
    const leather = said.find(({ real, of }) => real && said.some((one) => !one.real && one.of === of));
    const other = said.find(({ real, of }) => !real && of === leather?.of);
    if (!leather || !other) return [];
    const data = { leather: leather.words, other: other.words };
    return [{ kind: 'doubt', data, claims: [leather.id, other.id], asks: [askFor('leather', {})] }];
  },
});
