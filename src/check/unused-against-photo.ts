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
    return evidence
      .filter(isSaying('shows-age'))
      .filter(({ id }) => pairOf('new-aged', fresh.id, id)?.relation === 'conflicts')
      .map(({ id, from, says: { photo, mark, place, by, within } }) => ({
        kind: 'doubt',
        key: from.id,
        data: { said: { words, inData }, photo: numberOf(photo), mark, place, by, within },
        photos: [photo],
        claims: fresh.claims,
        evidence: [fresh.id, id],
        asks: [askFor('condition', {})],
      }));
  },
});
