import { describe, expect, it } from 'vitest';
import { type PriceHints, parsePrices } from '../../../src/text';

const read = (text: string, hints: PriceHints = {}) =>
  parsePrices(text, hints).map(({ price, words }) => [
    price.kind,
    price.minorTo === undefined ? price.minor : [price.minor, price.minorTo],
    price.currency,
    words,
  ]);

describe('kinds of amounts', () => {
  it.each<[string, unknown[]]>([
    ['450 €', [['sale', 45000, 'EUR', '450 €']]],
    [
      'was 600 € now 450 €',
      [
        ['was', 60000, 'EUR', '600 €'],
        ['sale', 45000, 'EUR', '450 €'],
      ],
    ],
    [
      '€100 shipping €5',
      [
        ['sale', 10000, 'EUR', '€100'],
        ['shipping', 500, 'EUR', '€5'],
      ],
    ],
    [
      "€1'250 postage €12.50",
      [
        ['sale', 125000, 'EUR', "€1'250"],
        ['shipping', 1250, 'EUR', '€12.50'],
      ],
    ],
    [
      '€12,50 shipping, €12,90',
      [
        ['shipping', 1250, 'EUR', '€12,50'],
        ['sale', 1290, 'EUR', '€12,90'],
      ],
    ],
    ['€6.95 - €9.95', [['range', [695, 995], 'EUR', '€6.95 - €9.95']]],
    ['300-400 €', [['range', [30000, 40000], 'EUR', '300-400 €']]],
    ['zwischen 180 und 240 €', [['range', [18000, 24000], 'EUR', '180 und 240 €']]],
    ['de 180 al 240 €', [['range', [18000, 24000], 'EUR', '180 al 240 €']]],
    ['spedizione a Roma 5 €', [['shipping', 500, 'EUR', '5 €']]],
    ['Versand innerhalb Deutschland kosten 5 €', [['shipping', 500, 'EUR', '5 €']]],
    ['12000円から15000円', [['range', [12000, 15000], 'JPY', '12000円から15000円']]],
    ['3 × €20', [['instalment', 2000, 'EUR', '€20']]],
    ['4 payments of 112.50 €', [['instalment', 11250, 'EUR', '112.50 €']]],
    ['15 €/Monat', [['instalment', 1500, 'EUR', '15 €']]],
    [
      '450 € + 4 € p&p',
      [
        ['sale', 45000, 'EUR', '450 €'],
        ['shipping', 400, 'EUR', '4 €'],
      ],
    ],
    ['12 €/m²', [['unit', 1200, 'EUR', '12 €']]],
    ['2 pairs from EUR 349', [['from', 34900, 'EUR', 'EUR 349']]],
    [
      'Statt 900 € nur 450 €',
      [
        ['was', 90000, 'EUR', '900 €'],
        ['sale', 45000, 'EUR', '450 €'],
      ],
    ],
    [
      '450 € VB, NP 2.400,00 €',
      [
        ['sale', 45000, 'EUR', '450 €'],
        ['was', 240000, 'EUR', '2.400,00 €'],
      ],
    ],
    [
      'au lieu de 900 € : 450 €',
      [
        ['was', 90000, 'EUR', '900 €'],
        ['sale', 45000, 'EUR', '450 €'],
      ],
    ],
    ['à partir de 450 €', [['from', 45000, 'EUR', '450 €']]],
    [
      'invece di 900 €, ora 450 €',
      [
        ['was', 90000, 'EUR', '900 €'],
        ['sale', 45000, 'EUR', '450 €'],
      ],
    ],
    ['vanaf € 450', [['from', 45000, 'EUR', '€ 450']]],
    ['Versand 6,90 €', [['shipping', 690, 'EUR', '6,90 €']]],
    ['送料 800円', [['shipping', 800, 'JPY', '800円']]],
    [
      '定価 120,000円 → 45,000円',
      [
        ['was', 120000, 'JPY', '120,000円'],
        ['sale', 45000, 'JPY', '45,000円'],
      ],
    ],
    ['1 290 € fdpin', [['sale', 129000, 'EUR', '1 290 €']]],
  ])('%s', (text, expected) => expect(read(text)).toEqual(expected));
});

describe('numbers that are no prices', () => {
  it.each([
    'Free shipping on orders over $150',
    'Ab 75 € versandkostenfrei',
    'Livraison offerte dès 80 €',
    'Alibaba to raise $12.9bn',
    'Item weight: 0.66 pounds',
    'all 450 of them',
    '50% off',
    'Save €20',
    '20 € Rabatt',
    '12 x 20 x 30 cm',
    '12/03/2014',
    'Carryall 30',
    '€',
    'made in 1994',
    '3.5 kg',
    'call 020 555 0100',
  ])('%s', (text) => expect(read(text)).toEqual([]));
});

describe('separators of every place', () => {
  it.each<[string, PriceHints, number]>([
    ['1\u00a0299,00 €', {}, 129900],
    ['1\u202f299,00 €', {}, 129900],
    ['1\u2009299 €', {}, 129900],
    ["CHF 1'299.50", {}, 129950],
    ['CHF 1’299.–', {}, 129900],
    ['1.299,00 €', {}, 129900],
    ['€1,299.00', {}, 129900],
    ['EUR 1299', {}, 129900],
    ['50,- €', {}, 5000],
    ['1.299 €', { language: 'de' }, 129900],
    ['1,299 €', { language: 'en' }, 129900],
    ['€ 12.345.678', {}, 1234567800],
    ['\u200e₪ 450\u200f', {}, 45000],
    ['٤٥٠٫٥٠ €', {}, 45050],
    ['۱۲۰ €', {}, 12000],
    ['４５０ユーロ', {}, 45000],
    ['45,000円', {}, 45000],
    ['KWD 423.923', {}, 423923],
  ])('%s %j → %i', (text, hints, minor) =>
    expect(parsePrices(text, hints).map(({ price }) => price.minor)).toEqual([minor]),
  );

  it('keeps both readings of "1.299" where no language or country settles it', () => {
    const [found] = parsePrices('1.299 €');
    expect(found?.price).toEqual({
      kind: 'sale',
      minor: 129900,
      exponent: 2,
      currency: 'EUR',
      currencies: ['EUR'],
      otherMinor: [130],
    });
    expect(found?.caveats).toEqual(['ambiguous']);
  });

  it('gives a word between two amounts to the second', () => {
    expect(parsePrices('€310 RRP €980').map(({ price }) => [price.kind, price.minor])).toEqual([
      ['sale', 31_000],
      ['was', 98_000],
    ]);
    expect(parsePrices('€980 RRP').map(({ price }) => price.kind)).toEqual(['was']);
  });

  it('keeps both readings of a number behind a model name, and one behind a price word or with a hard space', () => {
    const minors = (text: string) => parsePrices(text).map(({ price }) => [price.minor, price.otherMinor ?? []]);
    expect(minors('Carryall 30 450 €')).toEqual([[3_045_000, [45_000]]]);
    expect(minors('Preis 1 299 €')).toEqual([[129_900, []]]);
    expect(minors('sac 1\u00a0299 €')).toEqual([[129_900, []]]);
  });

  it('keeps both readings of "3.350" even for a currency that groups with commas', () => {
    expect(parsePrices('$3.350', { currency: 'USD' })[0]?.price).toMatchObject({ minor: 335000, otherMinor: [335] });
  });
});

describe('currency signs that several countries share', () => {
  it.each<[string, PriceHints, string | null, string[]]>([
    ['$450', {}, null, ['currency-open']],
    ['$450', { currency: 'CAD' }, 'CAD', ['currency-by-data']],
    ['$450', { domain: 'attic-arcade.example.au' }, 'AUD', ['currency-by-domain']],
    ['$450', { language: 'en-NZ' }, 'NZD', ['currency-by-language']],
    ['$450', { language: 'en' }, null, ['currency-open']],
    ['450 kr', {}, null, ['currency-open']],
    ['450 kr', { language: 'sv' }, 'SEK', ['currency-by-language']],
    ['450 kr', { domain: 'attic-arcade.example.dk' }, 'DKK', ['currency-by-domain']],
    ['¥45000', {}, null, ['currency-open']],
    ['¥45000', { language: 'ja' }, 'JPY', ['currency-by-language']],
    ['\\45000', { language: 'ja' }, 'JPY', ['currency-by-language']],
    ['£450', {}, null, ['currency-open']],
    ['£450', { language: 'en-GB' }, 'GBP', ['currency-by-language']],
    ['£450', { language: 'ar', domain: 'attic-arcade.example.eg' }, 'EGP', ['currency-by-domain']],
    ['$450', { currency: 'EUR' }, null, ['currency-open']],
    ['US $450', {}, 'USD', []],
    ['C$450', {}, null, ['currency-open']],
    ['C$450', { language: 'en-CA' }, 'CAD', ['currency-by-language']],
    ['AU$450', {}, 'AUD', []],
    ['$ NZ 450', {}, 'NZD', []],
    ['450 Schweizer Franken', {}, 'CHF', []],
    ['450 livres sterling', {}, 'GBP', []],
    ['R$ 450', {}, 'BRL', []],
    ['450 eur', {}, 'EUR', []],
  ])('%s with %j is %s', (text, hints, currency, caveats) => {
    const [found] = parsePrices(text, hints);
    expect([found?.price.currency, found?.caveats]).toEqual([currency, caveats]);
  });

  it('quotes a yen sign that Shift_JIS had as a backslash as the text has it', () => {
    const text = '送料込 価格 \\38,000 です';
    const [found] = parsePrices(text, { language: 'ja' });
    expect(found).toMatchObject({ words: '\\38,000', price: { currency: 'JPY', minor: 38_000 } });
    expect(text.slice(found?.start, found?.end)).toBe(found?.words);
  });
});

describe('amounts without a sign', () => {
  it('count when they are the whole text', () =>
    expect(read('1299.50', { currency: 'EUR' })).toEqual([['sale', 129950, 'EUR', '1299.50']]));
  it('count beside a price word', () => expect(read('Preis: 450 VB')).toEqual([['sale', 45000, null, '450']]));
  it('are nothing in running text', () => expect(read('I have 450 photos of it')).toEqual([]));
});

describe('an amount that a blank divides', () => {
  it.each<[string, number, number[]]>([
    ['2  850 €', 285000, []],
    ['2\u00a0 850 €', 285000, []],
    ['1, 250.00 €', 125000, []],
    ['28 50 €', 285000, [2850, 5000]],
    ['€ 28 50', 285000, [2850, 2800]],
    ['2 8 50 €', 285000, [2850, 5000]],
  ])('%j keeps every reading, the whole first', (text, minor, others) =>
    expect(parsePrices(text).map(({ price }) => [price.minor, price.otherMinor ?? []])).toEqual([[minor, others]]),
  );
  it.each(['€45 2 bids', 'from 1994 450 €', '2 pairs 450 €', '30 x 20 450 €'])('%j has none', (text) =>
    expect(parsePrices(text).every(({ price }) => price.otherMinor === undefined)).toBe(true),
  );
});

describe('a range gives its lower end and its upper, and never the upper alone', () => {
  it.each([
    '£180-240',
    '£180 – 240',
    '£180/£240',
    'zwischen 180 und 240 €',
    'entre 180 y 240 €',
    'de 180 à 240 €',
    'from £180 to £240',
  ])('%s', (text) =>
    expect(parsePrices(text).map(({ price }) => [price.kind, price.minor, price.minorTo])).toEqual([
      ['range', 18000, 24000],
    ]),
  );
  it('a number behind a dash that counts something is none', () =>
    expect(parsePrices('£180 - 240 cm').map(({ price }) => price.kind)).toEqual(['sale']));
});

describe('a number without a sign of money', () => {
  it('is a price when it is all that stands there, or when words beside it say so', () => {
    expect(read('380', { currency: 'EUR' }).map(([kind, minor]) => [kind, minor])).toEqual([['sale', 38000]]);
    expect(read('price 380', { currency: 'EUR' }).map(([kind, minor]) => [kind, minor])).toEqual([['sale', 38000]]);
    expect(read('a bag of 380 stitches and more of them than one would think', { currency: 'EUR' })).toEqual([]);
  });
});

it.each([
  ['12万円', 120_000],
  ['1万5千円', 15_000],
  ['1.5万円', 15_000],
  ['2万3500円', 23_500],
  ['12万', null],
])('ten thousands of yen: %s', (said, minor) => {
  expect(parsePrices(said).map(({ price }) => price.minor)).toEqual(minor === null ? [] : [minor]);
});
