import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { qualitiesOf } from './qualities';
import { because } from './reasons';
import { saidSchema } from './types';

export const conditionWordsAgree = defineCheck({
  id: 'condition-words-agree',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({
    said: saidSchema,
    /** The seller's words for wear. */
    against: z.string(),
  }),
  needs: { evidence: true, pairs: true },
  run({ evidence, pairOf }) {
    const [fresh] = qualitiesOf(evidence, 'called-new');
    if (!fresh) return { notApplicable: because('not-called-new', {}) };
    const used = qualitiesOf(evidence, 'called-used').find(
      ({ id }) => pairOf('new-used', fresh.id, id)?.relation === 'conflicts',
    );
    if (!used) return [];
    const { words, inData } = fresh.says;
    return [
      {
        kind: 'doubt',
        data: { said: { words, inData }, against: used.says.words },
        claims: [...fresh.claims, ...used.claims],
        evidence: [fresh.id, used.id],
        asks: [askFor('condition', {})],
      },
    ];
  },
});
