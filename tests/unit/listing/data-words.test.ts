import { describe, expect, it } from 'vitest';
import { currencyCode, dataPrice, priceText, toMinor } from '../../../src/listing/structured/data-price';
import { newItem, shortName } from '../../../src/listing/structured/item';
import { availabilityOf } from '../../../src/listing/structured/offer-facts';
import { conditionOf, fromItem, termName } from '../../../src/listing/structured/terms';
import { hints } from './page';

describe('terms of data', () => {
  it.each([
    ['https://schema.org/UsedCondition', 'usedcondition'],
    ['schema:New', 'new'],
    ['#Like-New 2', 'likenew'],
    ['USED', 'used'],
  ])('%s is %s', (text, wanted) => {
    expect(termName(text)).toBe(wanted);
  });

  it.each([
    ['new', ['New', 'NewCondition', 'new with tags', 'New other condition', 'http://schema.org/NewCondition']],
    ['as-new', ['like new', 'LikeNewCondition', 'as new', 'Open box', 'Mint', 'mint condition']],
    ['used', ['Used', 'UsedCondition', 'Refurbished', 'RefurbishedCondition', 'pre-owned', 'second hand']],
    ['damaged', ['Damaged', 'DamagedCondition']],
    [null, ['', 'news', 'unused', 'good', 'not new']],
  ])('tells the condition %s', (condition, texts) => {
    for (const text of texts) expect(conditionOf(text), text).toBe(condition);
  });

  it.each([
    [
      'offered',
      [
        'InStock',
        'https://schema.org/LimitedAvailability',
        'OnlineOnly',
        'InStoreOnly',
        'available',
        'PreOrder',
        'PreSale',
        'BackOrder',
        'MadeToOrder',
      ],
    ],
    ['sold', ['OutOfStock', 'out of stock', 'SoldOut', 'sold']],
    ['removed', ['Discontinued', 'removed', 'expired']],
    ['reserved', ['Reserved']],
    [null, ['', 'oos', 'stock', 'unavailable']],
  ])('tells the availability %s', (availability, texts) => {
    for (const text of texts) expect(availabilityOf(text), text).toBe(availability);
  });

  it('shortens names of the vocabulary alone', () => {
    for (const name of [
      'http://schema.org/Product',
      'https://www.schema.org#Product',
      'schema:Product',
      ' Product ',
      '#Product',
    ])
      expect(shortName(name)).toBe('Product');
    expect(shortName('http://purl.org/goodrelations/v1#Product')).toBe('http://purl.org/goodrelations/v1#Product');
  });

  it('trusts each notation as far as its place', () => {
    const trust = (['json-ld', 'microdata', 'rdfa', 'open-graph', 'meta', 'visible', 'user-pick'] as const).map(
      (origin) => fromItem(newItem(origin, 'x')).confidence,
    );
    expect(trust).toEqual([0.9, 0.88, 0.86, 0.7, 0.5, 0.6, 1]);
    const item = { ...newItem('meta', 'x'), caveats: ['repaired'] };
    expect(fromItem(item, 0.5, 'name', ['tie'])).toEqual({
      origin: 'meta',
      where: 'x > name',
      confidence: 0.25,
      caveats: ['repaired', 'tie'],
    });
    expect(fromItem(item).where).toBe('x');
  });
});

describe('amounts of data', () => {
  it.each([
    ['540', 2, 54000],
    ['540.5', 2, 54050],
    ['540.50', 1, 5405],
    ['540.05', 1, null],
    ['540.', 0, 540],
    ['540.000000', 0, 540],
    ['540.0000000', 0, null],
    ['999999999999', 2, 99999999999900],
    ['1000000000000', 2, null],
    ['999999999999', 4, null],
    ['x', 2, null],
    ['-5', 2, null],
  ])('%s with %i decimals is %s', (text, exponent, minor) => {
    expect(toMinor(text, exponent)).toBe(minor);
  });

  it.each([
    ['eur', 'EUR'],
    [' EUR ', 'EUR'],
    [' xts ', 'XTS'],
    ['€', 'EUR'],
    ['$', null],
    ['', null],
    [null, null],
    ['EURO', 'EUR'],
    ['12', null],
  ])('the currency %s is %s', (text, code) => {
    expect(currencyCode(text, hints)).toBe(code);
  });

  it('are texts and numbers, and nothing else', () => {
    expect([5, ' 5 ', '0'].map((value) => priceText(value))).toEqual(['5', '5', '0']);
    expect(['', ' ', 'NaN', Number.NaN, true, undefined, newItem('meta', '')].map((value) => priceText(value))).toEqual(
      Array(7).fill(null),
    );
  });

  it.each<[string, string | null, object | null, string[]]>([
    ['540', 'EUR', { minor: 54000, exponent: 2, currency: 'EUR', currencies: ['EUR'] }, []],
    ['540.5', 'EUR', { minor: 54050 }, []],
    ['1.299', 'EUR', { minor: 129900 }, []],
    ['1.299', null, { minor: 129900, currency: null }, ['currency-open']],
    ['540', null, { minor: 54000, currency: null, currencies: [] }, ['currency-open']],
    ['540 €', null, { minor: 54000, currency: 'EUR', currencies: ['EUR'] }, []],
    ['¥5400', null, { minor: 5400, exponent: 0 }, ['currency-open']],
    ['540', 'JPY', { minor: 540, exponent: 0 }, []],
    ['0', 'EUR', null, []],
    ['free', 'EUR', null, []],
  ])('%s in %s', (text, currency, price, caveats) => {
    const read = dataPrice(text, currency, 'was', hints);
    if (price === null) expect(read).toBeNull();
    else expect(read).toMatchObject({ price: { kind: 'was', ...price }, words: text, caveats });
  });

  it('keep the hundred characters that they were read from', () => {
    expect(dataPrice(`540 €${' '.repeat(200)}`, 'EUR', 'sale', hints)?.words).toHaveLength(100);
  });
});
