import { practice } from './frame';
import { mmWords, sides, statedSide } from './sizes';
import { commonAsks, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/**
 * Own limits, no source: wide enough for a key ring, a belt and a trunk, so that only a slip of the unit or of the
 * decimals lies outside.
 */
const smallestMm = 10;
const largestMm = 2000;

export const sizePlausible = defineWritten({
  id: 'size-plausible',
  family: 'size',
  title: 'The measurements are those of a piece that is carried',
  failureTitle: 'A measurement is hardly possible for a piece that is carried',
  kinds: ['doubt'],
  basis: 'From a key ring to a trunk, no piece that is carried is under 1 cm or over 2 m wide or high.',
  innocent: 'The unit may be wrong: inches written as centimetres, or millimetres as centimetres.',
  settles: 'The measurement with its unit.',
  source: practice,
  needs: { stated: ['measures'], listing: ['measures'] },
  run({ listing }) {
    const measures = listing.measures.map(({ value }) => value);
    return sides.flatMap((side): WrittenSpeech[] => {
      const stated = side === 'depth' ? null : statedSide(measures, side);
      if (!stated || (stated.mm >= smallestMm && stated.mm <= largestMm)) return [];
      const limit = stated.mm > largestMm ? 'over 2 m' : 'under 1 cm';
      const statement = `The ${side} is stated as ${quote(stated.words)} = ${mmWords(stated.mm)}, which is ${limit}.`;
      return [{ kind: 'doubt', key: side, statement, asks: [commonAsks.measures] }];
    });
  },
});
