import { describe, expect, it } from 'vitest';
import { type Draft, emptyDraft } from '../../../src/listing/draft';
import { isProduct, labelledFrom, readProduct } from '../../../src/listing/structured/product-facts';
import { offer, read, thing, told } from './data-things';
import { hints } from './page';

describe('a product of the data', () => {
  it('is read whole, each property as far as it is trusted', () => {
    const { draft, labelled } = read(
      thing('Product', {
        name: ['Carryall 30', 'Second name'],
        alternateName: 'The Carryall',
        description: 'Tan leather.',
        brand: [thing('Brand', { name: 'Ondrasse' }), 'House of Ondrasse'],
        manufacturer: 'Ondrasse Bruxelles',
        model: 'Carryall',
        mpn: 'M1',
        sku: 'S1',
        productID: 'P1',
        gtin13: 'G13',
        gtin: 'G',
        color: ['tan', 'honey'],
        material: 'leather',
        itemCondition: ['UsedCondition', 'no condition'],
        width: '30 cm',
        additionalProperty: [
          thing('PropertyValue', { name: 'Lining', value: 'twill' }),
          thing('PropertyValue', { propertyID: 'Year', value: 1994 }),
          thing('PropertyValue', { name: 'Nothing' }),
          thing('PropertyValue', { value: 'of nothing' }),
        ],
      }),
    );
    expect(told(draft.title)).toEqual(['"Carryall 30" | name | 0.9', '"The Carryall" | alternateName | 0.54']);
    expect(told(draft.description)).toEqual(['"Tan leather." | description | 0.9']);
    expect(told(draft.maker)).toEqual([
      '"Ondrasse" | brand | 0.9',
      '"House of Ondrasse" | brand | 0.9',
      '"Ondrasse Bruxelles" | manufacturer | 0.765',
    ]);
    expect(told(draft.model)).toEqual(['"Carryall" | model | 0.9']);
    expect(told(draft.itemCode)).toEqual([
      '"M1" | mpn | 0.9',
      '"S1" | sku | 0.72',
      '"P1" | productID | 0.675',
      '"G13" | gtin13 | 0.45',
      '"G" | gtin | 0.45',
    ]);
    expect(told(draft.colour)).toEqual(['"tan" | color | 0.9', '"honey" | color | 0.9']);
    expect(told(draft.material)).toEqual(['"leather" | material | 0.9']);
    expect(told(draft.condition)).toEqual(['"used" | itemCondition | 0.9 | UsedCondition']);
    expect(told(draft.measures).map((one) => one.replace(/^.*?\| /, ''))).toEqual(['size | 0.9']);
    expect(labelled).toEqual([
      { name: 'Lining', value: 'twill', origin: 'json-ld', where: 'json-ld 1 > additionalProperty', confidence: 0.81 },
      { name: 'Year', value: '1994', origin: 'json-ld', where: 'json-ld 1 > additionalProperty', confidence: 0.81 },
    ]);
  });

  it('is trusted less where it may not be the right one, and says why', () => {
    const { draft } = read(thing('Product', { title: 'Carryall', headline: 'Tan' }), 0.5, ['tie']);
    expect(told(draft.title)).toEqual(['"Carryall" | name | 0.27 | tie', '"Tan" | alternateName | 0.162 | tie']);
  });

  it('offers the piece where one of its offers does, and is gone where all are', () => {
    const of = (...states: string[]) =>
      told(
        read(thing('Product', { offers: states.map((state) => offer({ availability: state })) })).draft.availability,
      );
    expect(of('OutOfStock', 'InStock')).toEqual([
      '"sold" | availability | 0.54 | OutOfStock',
      '"offered" | availability | 0.9 | InStock',
    ]);
    expect(of('OutOfStock', 'Discontinued')).toEqual([
      '"sold" | availability | 0.9 | OutOfStock',
      '"removed" | availability | 0.9 | Discontinued',
    ]);
    const before: Draft = {
      ...emptyDraft(),
      availability: [{ value: 'sold', origin: 'visible', where: 'x', confidence: 0.8 }],
    };
    readProduct(thing('Product', { offers: offer({ availability: 'InStock' }) }), {
      draft: before,
      labelled: [],
      hints,
    });
    expect(before.availability[0]?.confidence).toBe(0.8);
  });

  it('names its labels and values in so many characters', () => {
    const from = { origin: 'json-ld', where: 'x', confidence: 0.5 } as const;
    const { name, value } = labelledFrom('n'.repeat(61), 'v'.repeat(601), from);
    expect([name.length, value.length]).toEqual([60, 600]);
    expect(labelledFrom('a', 'b', { ...from, caveats: [] })).toEqual({ ...from, name: 'a', value: 'b' });
    expect(labelledFrom('a', 'b', { ...from, caveats: ['tie'] })).toEqual({
      ...from,
      name: 'a',
      value: 'b',
      caveats: ['tie'],
    });
  });

  it('is what is sold by its type, or has an offer and is no shop, event or page', () => {
    const types = ['Product', 'IndividualProduct', 'ProductModel', 'ProductGroup', 'SomeProducts', 'product'];
    expect(types.map((type) => isProduct(thing(type)))).toEqual(types.map(() => true));
    for (const type of ['Vehicle', 'CreativeWork', 'VisualArtwork', 'Thing']) {
      expect(isProduct(thing(type))).toBe(false);
      expect(isProduct(thing(type, { offers: offer({}) }))).toBe(true);
    }
    for (const type of ['Organization', 'Service', 'WebSite', 'Event'])
      expect(isProduct(thing(type, { offers: offer({}) }))).toBe(false);
    expect(isProduct(thing('Thing', { offers: 'five' }))).toBe(false);
    expect(isProduct(thing('Thing', { offers: ['five', offer({})] }))).toBe(true);
  });
});
