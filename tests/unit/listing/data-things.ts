import { type Draft, emptyDraft } from '../../../src/listing/draft';
import type { Labelled } from '../../../src/listing/extract-types';
import { addValue, type Item, type ItemValue, newItem } from '../../../src/listing/structured/item';
import { readProduct } from '../../../src/listing/structured/product-facts';
import type { Candidate } from '../../../src/listing/types';
import { hints } from './page';

/** Things of a page's data, and what is read of them. */
export type Value = ItemValue | ItemValue[];
export const thing = (
  types: string | string[],
  properties: Record<string, Value> = {},
  over: Partial<Item> = {},
): Item => {
  const item = { ...newItem('json-ld', 'json-ld 1'), types: [types].flat(), ...over };
  for (const [name, value] of Object.entries(properties))
    for (const one of [value].flat()) addValue(item, name, one as ItemValue);
  return item;
};
export const offer = (properties: Record<string, Value>) => thing('Offer', { priceCurrency: 'EUR', ...properties });
export const read = (product: Item, strength?: number, caveats?: string[]): { draft: Draft; labelled: Labelled[] } => {
  const found = { draft: emptyDraft(), labelled: [], hints };
  readProduct(product, found, strength, caveats);
  return found;
};
/** Each candidate as "value, where it stands behind the thing, confidence, words". */
export const told = (field: Candidate<unknown>[]) =>
  field.map(({ value, where, confidence, words, caveats }) =>
    [JSON.stringify(value), where.replace('json-ld 1 > ', ''), confidence, words, ...(caveats ?? [])]
      .filter((one) => one !== undefined)
      .join(' | '),
  );
export const euro = (minor: number, kind = 'sale') =>
  JSON.stringify({ kind, minor, exponent: 2, currency: 'EUR', currencies: ['EUR'] });
