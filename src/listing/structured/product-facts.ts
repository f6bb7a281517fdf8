import { type Draft, propose } from '../draft';
import { type ReadHints, readLabelled } from '../visible/labelled';
import { dataMeasures } from './data-measure';
import { hasType, type Item, isItem, itemsOf, textOf, textsOf, valuesOf } from './item';
import { offersOf, readOffer } from './offer-facts';
import { conditionOf, fromItem } from './terms';

/** Reads what a product's data says into the draft. `strength` below 1 for a product that may not be the right one. */
export function readProduct(
  product: Item,
  draft: Draft,
  hints: ReadHints,
  strength = 1,
  caveats: readonly string[] = [],
): void {
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
    if (name && value) readLabelled(name, value, draft, from('additionalProperty', 0.9), hints);
  }
  for (const offer of offersOf(product)) readOffer(offer, product, draft, hints, strength, caveats);
}

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
