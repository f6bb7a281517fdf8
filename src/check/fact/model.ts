import { type NamedModel, namedModel } from '../../evidence';
import { because } from '../reasons';
import { defineFact } from './define';

/** The model of the maker's file that the piece is said to be. */
export const model = defineFact<NamedModel>(({ maker, claims, listing, severalPieces }) => {
  // What the page names by itself may be another piece; a claim that counts is of this one.
  const fields = severalPieces ? [] : [listing.model, listing.title];
  const said = { model: claims.filter((claim) => claim.kind === 'model'), fields };
  const named = namedModel(maker?.models ?? [], said);
  return named ? { is: named } : { notApplicable: because('no-model-of-file', {}) };
});
