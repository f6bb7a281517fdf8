import { describe, expect, it } from 'vitest';
import { distanceLaw } from '../../../src/evidence';
import { emptyListing, priceOf, stated } from '../check/sample';

type Page = { name?: string; place?: string; asks?: readonly string[] };
const lawOf = ({ name, place, asks = [] }: Page) =>
  distanceLaw({
    seller: {
      ...emptyListing.seller,
      name: name === undefined ? [] : stated(name),
      place: place === undefined ? [] : stated(place),
    },
    price: asks.flatMap((currency) => stated(priceOf(20_000, currency))),
  });

describe('the law of a sale at a distance', () => {
  it.each<[string, Page]>([
    ['euros', { asks: ['EUR'] }],
    ['crowns of a member', { asks: ['SEK'] }],
    ['two covered currencies', { asks: ['EUR', 'GBP'] }],
    ['a place by its country', { place: 'Lyon, Frankreich', asks: ['USD'] }],
    ['a place in Japanese', { place: 'イタリア、ボローニャ' }],
    ['a British company that ends like a Japanese one', { name: 'Smith & Co. Ltd', asks: ['GBP'] }],
  ])('is European or British by %s', (_, page) => expect(lawOf(page)).toBe('covered'));

  it.each<[string, Page]>([
    ['francs', { asks: ['CHF'] }],
    ['one foreign currency of two', { asks: ['EUR', 'USD'] }],
    ['a country outside', { place: 'Zürich, Schweiz', asks: ['EUR'] }],
    ['two countries of which one is outside', { place: 'London, UK / Tokyo, Japan', asks: ['GBP'] }],
    ['two letters of a country outside', { place: 'Kyoto, JP', asks: ['EUR'] }],
    ['a company of Japan', { name: '有限会社みどり', asks: ['EUR'] }],
    ['a company of East Asia', { name: 'Midori Trading Co., Ltd.', asks: ['GBP'] }],
  ])('is another by %s', (_, page) => expect(lawOf(page)).toBe('elsewhere'));

  it('is not told by two letters that may be a part of another country, nor by a town', () => {
    expect(lawOf({ place: 'Wilmington, DE' })).toBe('untold');
    expect(lawOf({ place: 'Springfield' })).toBe('untold');
    expect(lawOf({})).toBe('untold');
  });
});
