import { describe, expect, it } from 'vitest';
import { offerPrices } from '../../../src/listing/structured/data-price';
import type { Item } from '../../../src/listing/structured/item';
import { groupOf, variantRange, variantsOf } from '../../../src/listing/structured/variants';
import { euro, offer, read, thing, type Value } from './data-things';
import { hints } from './page';

describe('the prices of an offer', () => {
  const prices = (properties: Record<string, Value>) =>
    offerPrices(offer(properties), hints).map(
      ({ price: { kind, minor, minorTo, currency } }) =>
        `${kind} ${minor}${minorTo === undefined ? '' : `–${minorTo}`} ${currency}`,
    );
  const specified = (price: Value, over: Record<string, Value> = {}, type = 'UnitPriceSpecification') =>
    thing(type, { price, ...over });

  it('are its own, as a value or a thing with a currency of its own', () => {
    expect(prices({ price: [540, '530'] })).toEqual(['sale 54000 EUR', 'sale 53000 EUR']);
    expect(prices({ price: thing('MonetaryAmount', { value: 5, currency: 'GBP' }) })).toEqual(['sale 500 GBP']);
    expect(prices({ price: thing('PriceSpecification', { price: 5 }) })).toEqual(['sale 500 EUR']);
    expect(prices({ price: 5, priceCurrency: [], currency: 'USD' })).toEqual(['sale 500 USD']);
    expect(prices({ price: ['', 0, true] })).toEqual([]);
  });

  it('are what its specifications are: from before, for shipping, for a unit, or for the piece', () => {
    const kind = (over: Record<string, Value>, type?: string) =>
      prices({ priceSpecification: specified(5, over, type) })[0]?.split(' ')[0];
    expect(
      ['ListPrice', 'https://schema.org/SRP', 'MSRP', 'StrikethroughPrice', 'RegularPrice', 'RRP'].map((priceType) =>
        kind({ priceType }),
      ),
    ).toEqual(Array(6).fill('was'));
    expect(kind({ priceType: 'https://schema.org/SalePrice' })).toBe('sale');
    expect(kind({ priceType: 'https://list.example/SalePrice' })).toBe('sale');
    expect(kind({}, 'DeliveryChargeSpecification')).toBe('shipping');
    expect(kind({}, 'PaymentChargeSpecification')).toBe('shipping');
    const of = (unit: Record<string, Value>) => kind({ referenceQuantity: thing('QuantitativeValue', unit) });
    expect(of({ unitCode: 'KGM' })).toBe('unit');
    expect(of({ unitText: 'kg' })).toBe('unit');
    expect(['C62', 'EA', 'NMP', 'h87'].map((unitCode) => of({ unitCode }))).toEqual(Array(4).fill('sale'));
    expect(of({ value: 1 })).toBe('sale');
  });

  it('are those of the parts of a specification too', () => {
    const parts = { priceComponent: [specified(7, { priceCurrency: 'GBP' }), 'text'] };
    expect(prices({ priceSpecification: specified([], parts, 'CompoundPriceSpecification') })).toEqual([
      'sale 700 GBP',
    ]);
  });

  it('are from before where a specification asks less, and only then', () => {
    expect(prices({ price: 90, priceSpecification: specified(54) })).toEqual(['was 9000 EUR', 'sale 5400 EUR']);
    expect(prices({ price: 54, priceSpecification: specified(54) })).toEqual(['sale 5400 EUR', 'sale 5400 EUR']);
    expect(prices({ price: 54, priceSpecification: specified(90) })).toEqual(['sale 5400 EUR', 'sale 9000 EUR']);
    expect(prices({ price: [90, 54] })).toEqual(['sale 9000 EUR', 'sale 5400 EUR']);
    expect(prices({ price: 90, priceSpecification: specified(54, { priceType: 'ListPrice' }) })).toEqual([
      'sale 9000 EUR',
      'was 5400 EUR',
    ]);
  });

  it('are a range where they differ, from the least on where there is no greatest', () => {
    expect(prices({ lowPrice: 5, highPrice: 7 })).toEqual(['range 500–700 EUR']);
    expect(prices({ lowPrice: 5, highPrice: 5 })).toEqual(['sale 500 EUR']);
    expect(prices({ lowPrice: 5 })).toEqual(['from 500 EUR']);
    expect(prices({ highPrice: 7 })).toEqual([]);
    expect(prices({ lowPrice: 5, highPrice: 'x' })).toEqual(['range 500 EUR']);
  });

  it('are trusted by their kind', () => {
    const { draft } = read(
      thing('Product', {
        offers: [offer({ price: 54 }), offer({ lowPrice: 5, highPrice: 7 }), offer({ lowPrice: 3 })],
      }),
    );
    expect(draft.price.map(({ value, confidence }) => `${value.kind} ${confidence}`)).toEqual([
      'sale 0.9',
      'range 0.81',
      'from 0.81',
    ]);
    const was = read(thing('Product', { offers: offer({ priceSpecification: specified(5, { priceType: 'RRP' }) }) }));
    expect(was.draft.price.map(({ value, confidence }) => `${value.kind} ${confidence}`)).toEqual(['was 0.63']);
  });
});

describe('variants of a product', () => {
  const variant = (price: number, over: Record<string, Value> = {}) =>
    thing('Product', { offers: offer({ price, ...over }) });
  const range = (...variants: Item[]) => variantRange(thing('ProductGroup', { hasVariant: variants }), hints);

  it('cost a range over all of them, or one price, where they share a currency', () => {
    expect(range(variant(7), variant(5), variant(6))).toMatchObject({ kind: 'range', minor: 500, minorTo: 700 });
    expect(range(variant(5), variant(5))).toEqual(JSON.parse(euro(500)));
    expect(range(variant(5), variant(6, { priceCurrency: 'GBP' }))).toBeNull();
    expect(range()).toBeNull();
    expect(range(thing('Product', { offers: offer({ lowPrice: 5 }) }))).toBeNull();
    const { draft } = read(thing('ProductGroup', { hasVariant: [variant(5), variant(7)] }));
    expect(draft.price.map(({ value, where, confidence }) => [value.kind, where, confidence])).toEqual([
      ['range', 'json-ld 1 > hasVariant', 0.81],
    ]);
  });

  it('are a hundred at most, of the group that names them or that they name', () => {
    const many = Array.from({ length: 101 }, (_, at) => variant(at + 1));
    const group = thing('ProductGroup', { hasVariant: many });
    expect(variantsOf(group)).toHaveLength(100);
    expect(groupOf(many[0]!)).toBe(group);
    const own = thing('Product', { isVariantOf: group });
    expect(groupOf(own)).toBe(group);
    expect(groupOf(thing('Product'))).toBeNull();
    const other = thing('Product');
    thing('Thing', { isRelatedTo: other });
    expect(groupOf(other)).toBeNull();
  });
});
