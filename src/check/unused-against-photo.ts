import * as z from 'zod';
import { ageShownSchema, isSaying } from '../evidence';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { qualitiesOf } from './qualities';
import { because } from './reasons';
import { photoNumber, saidSchema } from './types';

export const unusedAgainstPhoto = defineCheck({
  id: 'unused-against-photo',
  family: 'photos',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({
    said: saidSchema,
    photo: photoNumber,
    ...ageShownSchema.pick({ mark: true, place: true, by: true, within: true }).shape,
  }),
  needs: { onePiece: true, evidence: true, pairs: true },
  run({ evidence, pairOf, photoNumber: numberOf }) {
    const [fresh] = qualitiesOf(evidence, 'called-new');
    if (!fresh) return { notApplicable: because('not-called-new', {}) };
    const { words, inData } = fresh.says;
    return evidence.filter(isSaying('shows-age')).flatMap(({ id, from, says }) =>
      pairOf('new-aged', fresh.id, id)?.relation === 'conflicts'
        ? [
            {
              kind: 'doubt',
              key: from.id,
              data: {
                said: { words, inData },
                photo: numberOf(says.photo),
                mark: says.mark,
                place: says.place,
                by: says.by,
                within: says.within,
              },
              photos: [says.photo],
              claims: fresh.claims,
              evidence: [fresh.id, id],
              asks: [askFor('condition', {})],
            } as const,
          ]
        : [],
    );
  },
});
