import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { shownCodeSchema, shownFrom } from './code-data';
import { defineCheck, practice } from './frame';
import { because } from './reasons';

export const codeDenied = defineCheck({
  id: 'code-denied',
  family: 'code',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({
    shown: shownCodeSchema,
    /** The seller's words that there is none. */
    denied: z.string(),
  }),
  needs: { claims: ['no-code', 'code'], decodings: true },
  run({ decodings, claims, photoNumber }) {
    const [denied] = claims['no-code'];
    // Who quotes a code as well says "none" of something else.
    if (!denied || claims.code.length > 0) return { notApplicable: because('no-code-denied', {}) };
    const seen = decodings.find(({ from, accepted }) => accepted && from.kind === 'photo');
    if (seen?.from.kind !== 'photo') return [];
    return [
      {
        kind: 'gap',
        data: { shown: shownFrom(seen, seen.readings[0]?.text ?? seen.code, photoNumber), denied: denied.words },
        photos: [seen.from.photoId],
        claims: [denied.id],
        evidence: [evidenceId.codeText(seen.id)],
        asks: [askFor('whole-stamp', {})],
      },
    ];
  },
});
