import type { PriceHints } from '../../text/currency';
import { type Draft, type Provenance, propose } from '../draft';
import type { Labelled } from '../extract-types';
import { dataMeasures } from './data-measure';
import { hasType, type Item, isItem, itemsOf, textOf, textsOf, valuesOf } from './item';
import { offersOf, readOffer } from './offer-facts';
import { conditionOf, fromItem } from './terms';
import { variantRange } from './variants';

/** What has been read so far, and the hints for reading money. */
export interface Found {
  draft: Draft;
  labelled: Labelled[];
  hints: PriceHints;
}

/** Reads what a product's data says. `strength` below 1 for a product that may not be the right one. */
export function readProduct(product: Item, found: Found, strength = 1, caveats: readonly string[] = []): void {
  const { draft, hints } = found;
  const from = (path: string, scale = 1) => fromItem(product, strength * scale, path, caveats);
  propose(draft.title, textOf(product, 'name', 'title'), from('name'));
  propose(draft.title, textOf(product, 'headline', 'alternateName'), from('alternateName', 0.6));
  propose(draft.description, textOf(product, 'description'), from('description'));
  for (const name of textsOf(product, 'brand')) propose(draft.maker, name, from('brand'));
  for (const name of textsOf(product, 'manufacturer')) propose(draft.maker, name, from('manufacturer', 0.85));
  for (const name of textsOf(product, 'model')) propose(draft.model, name, from('model'));
  for (const [name, scale] of [
    ['mpn', 1],
    ['sku', 0.8],
    ['productID', 0.75],
    ['gtin13', 0.5],
    ['gtin', 0.5],
  ] as const)
    propose(draft.itemCode, textOf(product, name), from(name, scale));
  for (const text of textsOf(product, 'color')) propose(draft.colour, text, from('color'));
  for (const text of textsOf(product, 'material')) propose(draft.material, text, from('material'));
  for (const text of textsOf(product, 'itemCondition'))
    propose(draft.condition, conditionOf(text), from('itemCondition'), text);
  for (const measure of dataMeasures(product)) propose(draft.measures, measure, from('size'));
  for (const extra of itemsOf(product, 'additionalProperty')) {
    const name = textOf(extra, 'name', 'propertyID');
    const value = textOf(extra, 'value');
    if (name && value) found.labelled.push(labelledFrom(name, value, from('additionalProperty', 0.9)));
  }
  const range = variantRange(product, hints);
  if (range) propose(draft.price, range, from('hasVariant', 0.9));
  const before = draft.availability.length;
  for (const offer of offersOf(product)) readOffer(offer, product, draft, hints, strength, caveats);
  // Of several offers, one that is gone is one size or colour: the piece is offered as long as any of them is.
  const told = draft.availability.slice(before);
  if (told.some(({ value }) => value === 'offered'))
    for (const one of told) if (one.value !== 'offered') one.confidence *= 0.6;
}

/** A labelled value of data, with the trust that its place has. */
export const labelledFrom = (
  name: string,
  value: string,
  { origin, where, confidence, caveats }: Provenance,
): Labelled => ({
  name: name.slice(0, 60),
  value: value.slice(0, 600),
  origin,
  where,
  confidence,
  ...(caveats && caveats.length > 0 ? { caveats: [...caveats] } : {}),
});

const productTypes = [
  'Product',
  'IndividualProduct',
  'ProductModel',
  'ProductGroup',
  'SomeProducts',
  'Vehicle',
  'CreativeWork',
  'VisualArtwork',
];

/** Things that a page may be selling: products, and whatever has an offer. */
export function isProduct(item: Item): boolean {
  if (hasType(item, ...productTypes.slice(0, 5))) return true;
  return valuesOf(item, 'offers').some(isItem) && !hasType(item, 'Organization', 'Service', 'WebSite', 'Event');
}
