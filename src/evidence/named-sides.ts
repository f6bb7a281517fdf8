import type { Claim, ClaimOf } from '../claim/types';
import type { Field, Measure } from '../listing/types';
import { plainName } from '../maker';
import type { Model, Size } from '../maker/types';
import { sizedRuns } from './model-runs';
import { isSure } from './room';
import { type BagSide, bagSideSchema } from './says';

const mmPer = { cm: 10, mm: 1, in: 25.4 } as const;
export const sides: readonly BagSide[] = bagSideSchema.options;
type Lengths = Partial<Record<BagSide, number>>;

/** A model's stated size in millimetres, sides that the file leaves out missing. */
export function modelMm(size: Size): { mm: Lengths; toleranceMm: number } {
  const per = mmPer[size.unit];
  const mm: Lengths = { width: size.width * per };
  if (size.height !== undefined) mm.height = size.height * per;
  if (size.depth !== undefined) mm.depth = size.depth * per;
  return { mm, toleranceMm: size.tolerance * per };
}

/** What of a listing names a model. */
export interface NamingModel {
  model: readonly ClaimOf<'model'>[];
  fields: readonly Field<string>[];
}
export const namingModel = (
  claims: readonly Claim[],
  { model, title }: { model: Field<string>; title: Field<string> },
): NamingModel => ({ model: claims.filter((claim) => claim.kind === 'model'), fields: [model, title] });

/** What a listing calls its piece. */
export const wordsNaming = ({ model, fields }: NamingModel): string[] => [
  ...model.map((claim) => claim.model),
  ...fields.flatMap((field) => field.slice(0, 1).map(({ value }) => value)),
];

/** A model of the maker file, the words that name it, and the claims that do. */
export interface NamedModel {
  model: Model;
  words: string;
  claims: string[];
}

const namesOf = ({ name, aliases = [] }: Model): string[] => [name, ...aliases].map(plainName);
/** Whether a plain name stands among words as a whole. */
const isIn = (name: string, words: string): boolean => ` ${plainName(words)} `.includes(` ${name} `);

/** The model that the listing names: in its model claims, its model field or its title, the longest name first. */
export function namedModel(models: readonly Model[], said: NamingModel): NamedModel | null {
  const names = models
    .flatMap((model) => namesOf(model).map((name) => ({ model, name })))
    .sort((a, b) => b.name.length - a.name.length);
  const places = [
    ...said.model.filter(isSure).map((claim) => ({ words: claim.model, claims: [claim.id] })),
    ...said.fields.flatMap((field) => field.slice(0, 1).map(({ value }) => ({ words: value, claims: [] as string[] }))),
  ];
  for (const place of places) {
    const hit = names.find(({ name }) => isIn(name, place.words));
    if (hit) return { model: hit.model, ...place };
  }
  return null;
}

const stemOf = (name: string): string => plainName(name).replace(/ \d+$/, '');

/** Models with a size that tell what size the named one may have: itself, or those whose name differs in the number only. */
export function sizedModels(models: readonly Model[], said: NamingModel): { own: Model | null; relatives: Model[] } {
  const own = namedModel(models, said)?.model;
  if (own && sizedRuns(own).length > 0) return { own, relatives: [] };
  const numbered = models.filter(
    (model) => sizedRuns(model).length > 0 && stemOf(model.name) !== plainName(model.name),
  );
  const named = namedModel(
    numbered.map((model) => ({ ...model, name: stemOf(model.name), aliases: [] })),
    said,
  );
  return { own: null, relatives: named ? numbered.filter(({ name }) => stemOf(name) === named.model.name) : [] };
}

/** The number in a model's name that is likely its width in centimetres (10 to 90), null without one. */
function namedWidthCm(name: string): number | null {
  const match = /(?:^|\s)(\d{2})(?=\s|$)/.exec(name);
  const value = match ? Number(match[1]) : 0;
  return value >= 10 && value <= 90 ? value : null;
}

/** The name of a model that carries such a number. */
export function numberedName(
  said: NamingModel['model'],
  field: Field<string>,
): { name: string; number: number } | null {
  for (const name of [...said.map(({ model }) => model), ...field.slice(0, 1).map(({ value }) => value)]) {
    const number = namedWidthCm(name);
    if (number !== null) return { name, number };
  }
  return null;
}

/** Whether the file gives the size of a model that this name names, by any of its own. */
export const hasSize = (name: string, models: readonly Model[]): boolean =>
  models.some((model) => sizedRuns(model).length > 0 && namesOf(model).some((one) => isIn(one, name)));

const orders: readonly (readonly BagSide[])[] = [
  ['width', 'height', 'depth'],
  ['width', 'depth', 'height'],
  ['height', 'width', 'depth'],
  ['height', 'depth', 'width'],
  ['depth', 'width', 'height'],
  ['depth', 'height', 'width'],
];

/**
 * The measures of a listing with their sides named. A row such as "30 x 21 x 17 cm" names none: it is taken as width,
 * height, depth, or, where a model's size is known, in the order that fits it best, so that an order of the seller's
 * own raises no doubt. `read` and `claimed` may repeat each other; the row is taken from one of them.
 */
export function namedSides<M extends Measure>(
  read: readonly M[],
  claimed: readonly M[],
  expected: Lengths,
): (M & { dimension: Exclude<Measure['dimension'], 'unknown'> })[] {
  const named = [...read, ...claimed].flatMap((one) =>
    one.dimension === 'unknown' ? [] : [{ ...one, dimension: one.dimension }],
  );
  if (named.some(({ dimension }) => dimension !== 'strap' && dimension !== 'handle')) return named;
  const row = [read, claimed]
    .map((measures) => measures.filter(({ dimension }) => dimension === 'unknown').slice(0, 3))
    .find((measures) => measures.length > 1);
  if (!row) return named;
  const inOrder = (order: readonly BagSide[]) =>
    row.map((measure, index) => ({ ...measure, dimension: order[index] ?? 'depth' }));
  const off = (order: readonly BagSide[]) =>
    inOrder(order).reduce((sum, { dimension, mm }) => sum + Math.abs(mm - (expected[dimension] ?? mm)), 0);
  const best = orders.reduce((kept, order) => (off(order) < off(kept) ? order : kept));
  return [...named, ...inOrder(best)];
}
