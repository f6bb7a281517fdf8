import type { Measure } from '../../listing/types';
import { because } from '../reasons';
import { modelMm, namedSides } from '../sizes';
import { defineFact } from './define';
import { model } from './model';

/** The measures that the listing states, their sides named, in the order that fits the named model best. */
export const sides = defineFact<Measure[]>(({ listing, claims, severalPieces }, ask) => {
  if (severalPieces) return { cannotTell: because('several-pieces', {}) };
  const named = ask(model);
  const size = 'is' in named ? named.is.model.size : undefined;
  const claimed = claims.flatMap((claim) => (claim.kind === 'measure' ? [claim.measure] : []));
  const read = listing.measures.map(({ value }) => value);
  return { is: namedSides(read, claimed, size ? modelMm(size).mm : {}) };
});
