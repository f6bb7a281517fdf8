import { practice } from './frame';
import { namedSides, sides, statedSide } from './sizes';
import { commonAsks } from './wording';
import { defineWritten } from './written';

export const measuresStated = defineWritten({
  id: 'measures-stated',
  family: 'size',
  title: 'Measurements are stated',
  failureTitle: 'No measurements are stated',
  kinds: ['gap'],
  basis: 'Width, height and depth tell one model and one size from another.',
  innocent: 'The seller may expect that buyers know the model.',
  settles: 'Width, height and depth with the tape in the photo.',
  source: practice,
  needs: { claims: ['measure'], listing: ['measures'] },
  run({ claims, listing }) {
    const measures = namedSides(
      listing.measures.map(({ value }) => value),
      claims.measure.map(({ measure }) => measure),
    );
    if (sides.some((side) => statedSide(measures, side))) return [];
    return [{ kind: 'gap', statement: 'The listing states no width, height or depth.', asks: [commonAsks.measures] }];
  },
});
