import type { Claim } from '../../claim/types';
import type { Field } from '../../listing/types';
import { plainName } from '../../maker';
import type { Model } from '../../maker/types';
import { because } from '../reasons';
import { defineFact } from './define';

/** A model of the maker file, the words that name it, and the claims that do. */
export interface NamedModel {
  model: Model;
  words: string;
  claims: string[];
}

/** The model that the listing names: in its model claims, its model field or its title, the longest name first. */
export function namedModel(
  models: Model[],
  said: { model: Extract<Claim, { kind: 'model' }>[]; fields: Field<string>[] },
): NamedModel | null {
  const names = models
    .flatMap((model) => [model.name, ...(model.aliases ?? [])].map((name) => ({ model, name: plainName(name) })))
    .sort((a, b) => b.name.length - a.name.length);
  const places = [
    ...said.model.map((claim) => ({ words: claim.model, claims: [claim.id] })),
    ...said.fields.flatMap((field) => field.slice(0, 1).map(({ value }) => ({ words: value, claims: [] as string[] }))),
  ];
  for (const place of places) {
    const hit = names.find(({ name }) => ` ${plainName(place.words)} `.includes(` ${name} `));
    if (hit) return { model: hit.model, ...place };
  }
  return null;
}

/** The model of the maker's file that the piece is said to be. */
export const model = defineFact<NamedModel>(({ maker, claims, listing, severalPieces }) => {
  // What the page names by itself may be another piece; a claim that counts is of this one.
  const fields = severalPieces ? [] : [listing.model, listing.title];
  const said = { model: claims.filter((claim) => claim.kind === 'model'), fields };
  const named = namedModel(maker?.models ?? [], said);
  return named ? { is: named } : { notApplicable: because('no-model-of-file', {}) };
});
