import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { sideSchema, sides, statedSchema, statedSide } from './sizes';

/**
 * Own limits, no source: wide enough for a key ring, a belt and a trunk, so that only a slip of the unit or of the
 * decimals lies outside.
 */
const smallestMm = 10;
const largestMm = 2000;

export const sizePlausible = defineCheck({
  id: 'size-plausible',
  family: 'size',
  kinds: ['doubt'],
  source: practice,
  data: statedSchema.extend({ side: sideSchema, limit: z.enum(['smallest', 'largest']) }),
  limits: { smallestMm, largestMm },
  needs: { onePiece: true, stated: ['measures'], listing: ['measures'] },
  run({ listing }) {
    const measures = listing.measures.map(({ value }) => value);
    return sides.flatMap((side) => {
      const stated = side === 'depth' ? null : statedSide(measures, side);
      if (!stated || (stated.mm >= smallestMm && stated.mm <= largestMm)) return [];
      const limit: 'smallest' | 'largest' = stated.mm > largestMm ? 'largest' : 'smallest';
      const data = { side, words: stated.words, mm: stated.mm, limit };
      return [{ kind: 'doubt' as const, key: side, data, asks: [askFor('measures', {})] }];
    });
  },
});
