import { defineCheck, practice, type Speech } from './frame';
import { mmWords, sides, statedSide } from './sizes';
import { commonAsks, quote } from './wording';

/** Outside these a leather piece that is carried hardly lies. Common practice, no source. */
const smallestMm = 30;
const largestMm = 900;

export const sizePlausible = defineCheck({
  id: 'size-plausible',
  family: 'size',
  title: 'The measurements are those of a piece that is carried',
  failureTitle: 'A measurement is hardly possible for a piece that is carried',
  kinds: ['doubt'],
  basis: 'A carried piece is between 3 and 90 cm in width and height.',
  innocent: 'The unit may be wrong: inches written as centimetres, or millimetres as centimetres.',
  settles: 'The measurement with its unit.',
  source: practice,
  needs: { stated: ['measures'], listing: ['measures'] },
  run({ listing }) {
    const measures = listing.measures.map(({ value }) => value);
    return sides.flatMap((side): Speech[] => {
      const stated = side === 'depth' ? null : statedSide(measures, side);
      if (!stated || (stated.mm >= smallestMm && stated.mm <= largestMm)) return [];
      const statement = `The ${side} is stated as ${quote(stated.words)} = ${mmWords(stated.mm)}.`;
      return [{ kind: 'doubt', key: side, statement, asks: [commonAsks.measures] }];
    });
  },
});
