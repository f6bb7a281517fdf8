import * as z from 'zod';
import { periodSpan } from '../span';
import { stampLinesOf } from '../stamp/types';
import { askFor } from './asks';
import { daysBefore } from './dates';
import { defineCheck, practice } from './frame';
import { because } from './reasons';

/** From this score on, a line found in a photo counts as a stamp that is shown, read or not. */
const looksLikeStamp = 0.5;

export const stampCloseUp = defineCheck({
  id: 'stamp-close-up',
  family: 'photos',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ photos: z.number() }),
  limits: { looksLikeStamp },
  needs: {
    claims: ['made'],
    listing: ['photos'],
    decodings: true,
    photos: 'read',
    stampedFrom: true,
    perhaps: ['clearPhotos'],
  },
  run(facts) {
    const first = facts.stampedFrom ? periodSpan([facts.stampedFrom, null]) : null;
    const claims = facts.claims.made;
    if (first && claims.length > 0 && claims.every((claim) => daysBefore(claim.span, first) > 0))
      return { notApplicable: because('not-yet-stamped', {}) };
    if (facts.decodings.some((decoding) => decoding.from.kind === 'photo')) return [];
    const shown = facts.photos.some((photo) => stampLinesOf(photo).some(isStamp));
    if (shown) return [];
    if (!('is' in facts.fact.clearPhotos)) return facts.fact.clearPhotos;
    return [{ kind: 'gap', data: { photos: facts.photos.length }, asks: [askFor('stamp-photo', {})] }];
  },
});

const isStamp = (line: { stampScore: number }) => line.stampScore >= looksLikeStamp;
