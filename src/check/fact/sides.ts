import { finestSides, type StatedSide } from '../../evidence';
import { because } from '../reasons';
import { defineFact } from './define';

/** The sides whose length the listing states, each with its finest statement. */
export const sides = defineFact<StatedSide[]>(({ evidence, severalPieces }) =>
  severalPieces ? { cannotTell: because('several-pieces', {}) } : { is: finestSides(evidence) },
);
