import * as z from 'zod';
import { bagSideSchema } from '../evidence';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { statedSchema } from './sizes';

/**
 * Own limits, no source: wide enough for a key ring, a belt and a trunk, so that only a slip of the unit or of the
 * decimals lies outside.
 */
const smallestMm = 10;
const largestMm = 2000;

/** The depth of a wallet or a belt may be next to nothing. */
const plausibleSides = ['width', 'height'] as const;

export const sizePlausible = defineCheck({
  id: 'size-plausible',
  family: 'size',
  kinds: ['doubt'],
  source: practice,
  data: statedSchema.extend({ side: bagSideSchema, limit: z.enum(['smallest', 'largest']) }),
  limits: { smallestMm, largestMm },
  needs: { onePiece: true, stated: ['measures'], listing: ['measures'] },
  run({ listing }) {
    const measures = listing.measures.map(({ value }) => value).sort((a, b) => a.precisionMm - b.precisionMm);
    return plausibleSides.flatMap((side) => {
      const stated = measures.find(({ dimension }) => dimension === side);
      if (!stated || (stated.mm >= smallestMm && stated.mm <= largestMm)) return [];
      const limit: 'smallest' | 'largest' = stated.mm > largestMm ? 'largest' : 'smallest';
      const data = { side, words: stated.words, mm: stated.mm, limit };
      return [{ kind: 'doubt' as const, key: side, data, asks: [askFor('measures', {})] }];
    });
  },
});
