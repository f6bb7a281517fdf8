import { describe, expect, it } from 'vitest';
import { type Draft, emptyDraft } from '../../../src/listing/draft';
import { settleConflicts } from '../../../src/listing/settle';
import type { Candidate, Condition, Listing, Origin, Price } from '../../../src/listing/types';

const settled = (before: Partial<Draft>, text = '') =>
  settleConflicts({ ...emptyDraft(), ...structuredClone(before) }, text);
const one = <T>(value: T, confidence: number, origin: Origin = 'visible', where = 'here'): Candidate<T> => ({
  value,
  origin,
  where,
  confidence,
});
const price = (
  minor: number,
  confidence: number,
  origin: Origin = 'visible',
  where = 'p',
  kind: Price['kind'] = 'sale',
) => one<Price>({ kind, minor, exponent: 2, currency: 'EUR', currencies: ['EUR'] }, confidence, origin, where);
const told = ({ value, origin, confidence, where, caveats }: Candidate<Price>): string =>
  [value.kind, value.minor, origin, where, Math.round(confidence * 1000) / 1000, ...(caveats ?? [])].join(' ');
const pricesOf = (prices: Candidate<Price>[], more: Partial<Draft> = {}) =>
  settled({ price: prices, ...more }).price.map(told);

describe('a condition that says the same and more', () => {
  const conditions = (...all: [Condition, number][]) =>
    settled({ condition: all.map(([value, confidence]) => one(value, confidence)) }).condition.map(
      ({ value, confidence }) => `${value} ${confidence}`,
    );
  it.each<[[Condition, number][], string[]]>([
    [[], []],
    [
      [
        ['used', 0.9],
        ['worn', 0.6],
      ],
      ['worn 0.9', 'used 0.9'],
    ],
    [
      [
        ['used', 0.9],
        ['worn', 0.59],
      ],
      ['used 0.9', 'worn 0.59'],
    ],
    [
      [
        ['used', 0.9],
        ['new', 0.8],
        ['as-new', 0.7],
        ['damaged', 0.65],
      ],
      ['as-new 0.9', 'used 0.9', 'new 0.8', 'damaged 0.65'],
    ],
    [
      [
        ['used', 0.9],
        ['used-very-good', 0.7],
      ],
      ['used-very-good 0.9', 'used 0.9'],
    ],
    [
      [
        ['used', 0.9],
        ['damaged', 0.7],
      ],
      ['damaged 0.9', 'used 0.9'],
    ],
    [
      [
        ['new', 0.9],
        ['worn', 0.8],
      ],
      ['new 0.9', 'worn 0.8'],
    ],
    [
      [
        ['used', 0.9],
        ['unused', 0.8],
      ],
      ['used 0.9', 'unused 0.8'],
    ],
  ])('%j is %j', (before, after) => {
    expect(conditions(...before)).toEqual(after);
  });
});

describe('terms of return that say the same and more', () => {
  type Terms = Listing['returns'][number]['value'];
  const terms = (...all: [boolean, number | null][]) =>
    settled({
      returns: all.map(([accepted, days], at) => one<Terms>({ accepted, days, words: 'x' }, 0.9 - at / 10)),
    }).returns.map(({ value, confidence }) => `${value.accepted} ${value.days} ${confidence}`);
  it.each<[[boolean, number | null][], string[]]>([
    [
      [
        [true, null],
        [true, 14],
      ],
      ['true 14 0.9', 'true null 0.9'],
    ],
    [
      [
        [true, null],
        [false, 14],
        [true, 30],
        [true, 7],
      ],
      ['true 30 0.9', 'true null 0.9', 'false 14 0.8', 'true 7 0.6000000000000001'],
    ],
    [
      [
        [false, null],
        [true, 14],
      ],
      ['false null 0.9', 'true 14 0.8'],
    ],
    [
      [
        [true, 7],
        [true, 14],
      ],
      ['true 7 0.9', 'true 14 0.8'],
    ],
    [[[true, null]], ['true null 0.9']],
  ])('%j is %j', (before, after) => {
    expect(terms(...before)).toEqual(after);
  });
});

describe('prices', () => {
  it.each<[string, Candidate<Price>[], string[]]>([
    ['none', [], []],
    [
      'data of the amount that is struck through',
      [price(600, 0.9, 'json-ld'), price(500, 0.8), price(600, 0.5, 'visible', 'p', 'was')],
      ['sale 500 visible p 0.8', 'was 600 json-ld p 0.72', 'was 600 visible p 0.5'],
    ],
    [
      'data of the amount that is struck through, beside a price that is barely seen',
      [price(600, 0.9, 'json-ld'), price(500, 0.6), price(600, 0.5, 'visible', 'p', 'was')],
      ['sale 500 visible p 0.6', 'was 600 json-ld p 0.54', 'was 600 visible p 0.5'],
    ],
    [
      'data of the amount that is struck through, beside one that is hardly seen',
      [price(600, 0.9, 'json-ld'), price(500, 0.59), price(600, 0.5, 'visible', 'p', 'was')],
      ['sale 600 json-ld p 0.9', 'sale 500 visible p 0.59', 'was 600 visible p 0.5'],
    ],
    [
      'a former price that is less than the one seen',
      [price(400, 0.9, 'json-ld'), price(500, 0.8), price(400, 0.5, 'visible', 'p', 'was')],
      ['sale 400 json-ld p 0.9 conflict', 'sale 500 visible p 0.8 conflict', 'was 400 visible p 0.5'],
    ],
    [
      'a former price that the data alone knows',
      [price(600, 0.9, 'json-ld'), price(500, 0.8), price(600, 0.5, 'microdata', 'p', 'was')],
      ['sale 600 json-ld p 0.9 conflict', 'sale 500 visible p 0.8 conflict', 'was 600 microdata p 0.5'],
    ],
    [
      'an amount that was pointed at and is struck through',
      [price(600, 1, 'user-pick'), price(500, 0.8), price(600, 0.5, 'visible', 'p', 'was')],
      ['sale 600 user-pick p 1', 'sale 500 visible p 0.8', 'was 600 visible p 0.5'],
    ],
    [
      'less sure data than the seen price',
      [price(500, 0.8), price(600, 0.3, 'meta'), price(600, 0.5, 'visible', 'p', 'was')],
      ['sale 500 visible p 0.8', 'was 600 visible p 0.5', 'was 600 meta p 0.3'],
    ],
    [
      'one whose element is called the price',
      [price(500, 0.8), price(510, 0.75, 'visible', 'i#price'), price(520, 0.79, 'visible', 'div#my-price-2 > b')],
      ['sale 520 visible div#my-price-2 > b 0.8', 'sale 500 visible p 0.8', 'sale 510 visible i#price 0.75'],
    ],
    [
      'one so called that is less sure by seven hundredths',
      [price(500, 0.8), price(510, 0.73, 'visible', 'i#price')],
      ['sale 510 visible i#price 0.8', 'sale 500 visible p 0.8'],
    ],
    [
      'one so called that is less sure by nine hundredths',
      [price(500, 0.8), price(510, 0.71, 'visible', 'i#price')],
      ['sale 500 visible p 0.8', 'sale 510 visible i#price 0.71'],
    ],
    [
      'one so called in the data, and a former one',
      [price(500, 0.8), price(500, 0.8, 'json-ld', 'i#price'), price(510, 0.8, 'visible', 'i#price', 'was')],
      ['sale 500 visible p 0.8', 'sale 500 json-ld i#price 0.8', 'was 510 visible i#price 0.8'],
    ],
    [
      'the best one so called already',
      [price(500, 0.8, 'visible', 'b#price > i'), price(510, 0.79, 'visible', 'i#price')],
      ['sale 500 visible b#price > i 0.8', 'sale 510 visible i#price 0.79'],
    ],
    [
      'the best one of the data',
      [price(510, 0.9, 'json-ld'), price(510, 0.89, 'visible', 'i#price')],
      ['sale 510 json-ld p 0.9', 'sale 510 visible i#price 0.89'],
    ],
    [
      'the best one no sale',
      [price(500, 0.8, 'visible', 'p', 'from'), price(510, 0.79, 'visible', 'i#price')],
      ['from 500 visible p 0.8', 'sale 510 visible i#price 0.79'],
    ],
    [
      'names that only hold the word',
      [price(500, 0.8), price(510, 0.79, 'visible', 'i.price'), price(520, 0.79, 'visible', 'i#price b')],
      ['sale 500 visible p 0.8', 'sale 510 visible i.price 0.79', 'sale 520 visible i#price b 0.79'],
    ],
    [
      'of stale data',
      [{ ...price(600, 0.9, 'json-ld'), caveats: ['stale'] }, price(500, 0.8), price(500, 0.7, 'microdata')],
      ['sale 600 json-ld p 0.9 stale', 'sale 500 visible p 0.8', 'sale 500 microdata p 0.7'],
    ],
    [
      'of the data and one that is hardly seen',
      [price(600, 0.9, 'json-ld'), price(500, 0.59)],
      ['sale 600 json-ld p 0.9', 'sale 500 visible p 0.59'],
    ],
    [
      'of the data and one that is barely seen',
      [price(600, 0.9, 'json-ld'), price(500, 0.6)],
      ['sale 600 json-ld p 0.9 conflict', 'sale 500 visible p 0.6 conflict'],
    ],
    [
      'pointed at and seen',
      [price(600, 1, 'user-pick'), price(500, 0.8)],
      ['sale 600 user-pick p 1', 'sale 500 visible p 0.8'],
    ],
    [
      'of the data only for a range',
      [price(600, 0.9, 'json-ld', 'p', 'range'), price(500, 0.8)],
      ['range 600 json-ld p 0.9', 'sale 500 visible p 0.8'],
    ],
  ])('%s', (_, before, after) => {
    expect(pricesOf(before)).toEqual(after);
  });

  it('of a piece that is gone are those it had last', () => {
    const of = (value: Listing['availability'][number]['value']) =>
      pricesOf([{ ...price(500, 0.8), caveats: ['ambiguous'] }, price(600, 0.5, 'visible', 'p', 'was')], {
        availability: [one(value, 0.9), one('sold', 0.5)],
      });
    const last = ['sale 500 visible p 0.8 ambiguous last-seen', 'was 600 visible p 0.5 last-seen'];
    expect([of('sold'), of('removed')]).toEqual([last, last]);
    expect(of('reserved')).toEqual(['sale 500 visible p 0.8 ambiguous', 'was 600 visible p 0.5']);
    expect(pricesOf([{ ...price(500, 0.8), caveats: ['last-seen'] }], { availability: [one('sold', 0.9)] })).toEqual([
      'sale 500 visible p 0.8 last-seen',
    ]);
  });

  it('that disagree are said with their words, behind what was said before', () => {
    const before = [{ code: 'x', where: 'y', what: 'z', remedy: '' }];
    const words = (data: Candidate<Price>, seen: Candidate<Price>) =>
      settled({ price: [data, seen], problems: before }).problems;
    expect(words({ ...price(600, 0.9, 'meta'), words: '€6.00' }, { ...price(500, 0.8), words: '€5.00' })).toEqual([
      ...before,
      {
        code: 'price-conflict',
        where: 'price',
        data: { inData: '€6.00', seen: '€5.00' },
      },
    ]);
    expect(words(price(600, 0.9, 'meta'), price(500, 0.8))[1]?.data).toEqual({ inData: '600', seen: '500' });
    expect(words(price(500, 0.9, 'meta'), price(500, 0.8))).toEqual(before);
  });
});

describe('two sums of one box', () => {
  const inDollars = (candidate: Candidate<Price>): Candidate<Price> => ({
    ...candidate,
    value: { ...candidate.value, currency: 'USD', currencies: ['USD'] },
  });
  const both = (as: typeof inDollars) => [
    price(600, 0.9, 'json-ld'),
    as(price(500, 0.9, 'json-ld')),
    price(600, 0.8, 'visible', 'div > b'),
    as(price(500, 0.8, 'visible', 'div > i')),
  ];
  it('are a former price and the one paid, in one currency', () => {
    expect(pricesOf(both((one) => one))[0]).toMatch(/^sale 500 json-ld/);
  });
  it('are one price twice, in two currencies', () => {
    expect(pricesOf(both(inDollars))[0]).toMatch(/^sale 600 json-ld/);
  });
});

describe('offers of several sizes', () => {
  type Offered = Draft['availability'][number];
  const offer = (value: Offered['value'], confidence: number, origin: Origin, where: string, tie = false): Offered => ({
    ...one(value, confidence, origin, where),
    ...(tie ? { caveats: ['tie'] } : {}),
  });
  const first = (...all: Offered[]) => {
    const [best] = settled({ availability: all }).availability;
    return best && `${best.value} ${best.confidence}`;
  };
  it.each<[string, Offered[], string | undefined]>([
    ['none', [], undefined],
    ['of one thing', [offer('sold', 0.9, 'json-ld', 'a'), offer('offered', 0.5, 'json-ld', 'a')], 'offered 0.9'],
    ['of two things', [offer('sold', 0.9, 'json-ld', 'a'), offer('offered', 0.5, 'json-ld', 'b')], 'sold 0.9'],
    [
      'of two that tie',
      [offer('sold', 0.9, 'json-ld', 'a', true), offer('offered', 0.5, 'json-ld', 'b', true)],
      'offered 0.9',
    ],
    [
      'of which one ties',
      [offer('sold', 0.9, 'json-ld', 'a', true), offer('offered', 0.5, 'json-ld', 'b')],
      'sold 0.9',
    ],
    [
      'of which the other ties',
      [offer('sold', 0.9, 'json-ld', 'a'), offer('offered', 0.5, 'json-ld', 'b', true)],
      'sold 0.9',
    ],
    ['of two notations', [offer('sold', 0.9, 'json-ld', 'a'), offer('offered', 0.5, 'microdata', 'a')], 'sold 0.9'],
    ['that are seen', [offer('sold', 0.9, 'visible', 'a'), offer('offered', 0.5, 'visible', 'a')], 'sold 0.9'],
    [
      'that were pointed at',
      [offer('sold', 0.9, 'user-pick', 'a'), offer('offered', 0.5, 'user-pick', 'a')],
      'sold 0.9',
    ],
    [
      'of which one is reserved',
      [offer('sold', 0.9, 'json-ld', 'a'), offer('reserved', 0.5, 'json-ld', 'a')],
      'sold 0.9',
    ],
    [
      'of which one was removed',
      [offer('removed', 0.9, 'json-ld', 'a'), offer('offered', 0.5, 'json-ld', 'a')],
      'removed 0.9',
    ],
  ])('%s', (_, all, wanted) => {
    expect(first(...all)).toBe(wanted);
  });
});

describe('a sum that the page works out in another currency', () => {
  const sum = (
    words: string | undefined,
    currency: string | null,
    confidence: number,
    more: Partial<Candidate<Price>> = {},
  ) => ({
    ...one<Price>({ kind: 'sale', minor: 1299, exponent: 2, currency, currencies: [] }, confidence),
    ...(words === undefined ? {} : { words }),
    ...more,
  });
  const pounds = sum('GBP 12.99', 'GBP', 0.6);
  const euros = sum('EUR 14.43', 'EUR', 0.8);
  const read = (text: string, ...prices: Candidate<Price>[]) =>
    settled({ price: prices }, text).price.map(({ words, confidence, caveats }) =>
      [words ?? '-', confidence, ...(caveats ?? [])].join(' '),
    );
  const converted = ['GBP 12.99 0.6', 'EUR 14.43 0.3 converted'];
  const kept = ['EUR 14.43 0.8', 'GBP 12.99 0.6'];

  it.each<[string, Candidate<Price>[], string[]]>([
    ['GBP 12.99 (approximately EUR 14.43)', [euros, pounds], converted],
    ['about EUR 14.43', [euros, pounds], converted],
    ['GBP 12.99 or EUR 14.43', [euros, pounds], kept],
    ['About EUR 14.43 for you. Price: EUR 14.43', [euros, pounds], kept],
    ['About EUR 14.43, so about EUR 14.43', [euros, pounds], converted],
    ['about that much: it was EUR 14.43', [euros, pounds], kept],
    ['about EUR 15.00', [euros, pounds], kept],
    ['about EUR 14.43', [euros], ['EUR 14.43 0.8']],
    ['about EUR 14.43', [euros, sum('12', 'EUR', 0.6)], ['EUR 14.43 0.8', '12 0.6']],
    ['about EUR 14.43', [euros, sum('12', null, 0.6)], ['EUR 14.43 0.8', '12 0.6']],
    [
      'about EUR 14.43',
      [euros, sum('GBP 3', 'GBP', 0.6, { value: { ...pounds.value, kind: 'shipping' } })],
      ['EUR 14.43 0.8', 'GBP 3 0.6'],
    ],
    ['about EUR 14.43', [{ ...euros, origin: 'json-ld' }, pounds], kept],
    ['about EUR 14.43', [{ ...euros, value: { ...euros.value, kind: 'was' } }, pounds], kept],
    ['about EUR 14.43', [sum(undefined, 'EUR', 0.8), pounds], ['- 0.8', 'GBP 12.99 0.6']],
    ['about EUR 14.43', [sum('EUR 14.43', 'EUR', 0.2), pounds], ['GBP 12.99 0.6', 'EUR 14.43 0.2 converted']],
  ])('%s', (text, prices, wanted) => {
    expect(read(text, ...prices)).toEqual(wanted);
  });
});
