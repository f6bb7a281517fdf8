import * as z from 'zod';
import { evidenceId } from '../evidence';
import { partsSeenIn, stampAsPart } from '../photo/read-types';
import { stampLinesOf } from '../stamp/types';
import { askFor } from './asks';
import { atPlaces } from './fact/code-places';
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
    pairs: true,
    perhaps: ['clearPhotos', 'codePlaces'],
  },
  run(facts) {
    const claims = facts.claims.made;
    const isEarly = ({ id }: { id: string }) => {
      const pair = facts.pairOf('stamping-date', evidenceId.stampingBegun, evidenceId.claim(id));
      return pair !== undefined && pair.relation !== 'agrees';
    };
    if (claims.length > 0 && claims.every(isEarly)) return { notApplicable: because('not-yet-stamped', {}) };
    if (facts.decodings.some((decoding) => decoding.from.kind === 'photo')) return [];
    const shown = facts.photos.some((photo) => stampLinesOf(photo).some(isStamp));
    // The buyer sees it where nothing was read.
    if (shown || facts.photos.some((photo) => partsSeenIn(photo).includes(stampAsPart))) return [];
    if (!('is' in facts.fact.clearPhotos)) return facts.fact.clearPhotos;
    return [
      {
        kind: 'gap',
        data: { photos: facts.photos.length },
        asks: [askFor('stamp-photo', atPlaces(facts.fact.codePlaces))],
      },
    ];
  },
});

const isStamp = (line: { stampScore: number }) => line.stampScore >= looksLikeStamp;
