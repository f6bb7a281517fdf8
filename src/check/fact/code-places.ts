import { placesOfCode } from '../../evidence';
import { because } from '../reasons';
import { defineFact } from './define';
import { model } from './model';

/** Where the file of the maker says that such a piece carries its code, in the file's words. */
export const codePlaces = defineFact<string[]>(({ maker, claims }, ask) => {
  if (!maker) return { cannotTell: because('no-maker-file', {}) };
  const named = ask(model);
  const dates = claims.flatMap((claim) => (claim.kind === 'made' ? [claim.span] : []));
  return { is: placesOfCode(maker, 'is' in named ? named.is.model.name : null, dates) };
});

/** A question for a photo of the code, with the places where it sits. */
export const atPlaces = (told: { is: string[] } | object): { where?: string[] } =>
  'is' in told && told.is.length > 0 ? { where: told.is } : {};
