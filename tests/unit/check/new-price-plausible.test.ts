import { newPricePlausible } from '../../../src/check/new-price-plausible';
import type { FilePrice } from '../../../src/maker/types';
import { testRule } from '../../rule-tester';
import { claim, facts, judgedBy, madeIn, ondrasse, priceOf, stated, withPhotos } from './sample';

const asking = (minor: number, currency: string | null, condition: 'new' | 'unused' | 'used' = 'new') =>
  facts({
    claims: [claim('condition', 'brand new', { condition })],
    listing: withPhotos(1, { price: stated(priceOf(minor, currency)) }),
  });
const inField = (minor: number, words?: string) =>
  facts({ listing: withPhotos(1, { price: stated(priceOf(minor)), condition: stated('new' as const, words) }) });

const prices: FilePrice[] = [
  { condition: 'new', least: 300, currency: 'EUR', year: 2000 },
  { condition: 'new', least: 620, currency: 'EUR', year: 2015 },
  { condition: 'new', least: 100, currency: 'GBP', year: 2015 },
];
const withFloors = (year: number | null, minor = 12_400) => {
  const given = asking(minor, 'EUR');
  const claims = year === null ? given.claims : [...given.claims, madeIn(year)];
  return judgedBy({ ...given, claims }, { ...ondrasse, prices });
};
/** A price of which a third is a whole sum. */
const roundFloor = { ...ondrasse, prices: [{ condition: 'new' as const, least: 600, currency: 'EUR', year: 2015 }] };
const floor = { amount: 620, currency: 'EUR', year: 2015 };
const said = { words: 'brand new', inData: false };
const source = 'maker file of Ondrasse: smallest new price of 2015 (source: invented price list)';

testRule(newPricePlausible, {
  speaks: {
    'on a new piece at a fifth of the smallest new price': [
      asking(12_400, 'EUR'),
      {
        kind: 'doubt',
        data: { said, price: priceOf(12_400), maker: 'Ondrasse', floor, share: 0.2 },
        says: "The listing says “brand new” at EUR 124; Ondrasse's smallest new piece was EUR 620 in 2015.",
        basis: ['EUR 124 is at most 20% of EUR 620'],
        asks: ['purchase'],
        claims: ['claim-condition'],
        source,
        evidence: ['price-asked-new-0', 'floor-0'],
      },
    ],
    'by the rates that favour the seller where the currency is another': [
      asking(14_000, 'USD', 'unused'),
      {
        kind: 'doubt',
        data: { said, price: priceOf(14_000, 'USD'), maker: 'Ondrasse', floor, share: 140 / (620 * 0.85) },
        says: "The listing says “brand new” at USD 140; Ondrasse's smallest new piece was EUR 620 in 2015.",
        basis: ['USD 140 is at most 27% of EUR 620', 'exchange rates from memory, not verified'],
        asks: ['purchase'],
        claims: ['claim-condition'],
        source,
        evidence: ['price-asked-new-0', 'floor-0'],
      },
    ],
    'on what only a field calls new, in its own words': [
      inField(12_400, 'Neu mit Etikett'),
      {
        kind: 'doubt',
        data: {
          said: { words: 'Neu mit Etikett', inData: false },
          price: priceOf(12_400),
          maker: 'Ondrasse',
          floor,
          share: 0.2,
        },
        says: "The listing says “Neu mit Etikett” at EUR 124; Ondrasse's smallest new piece was EUR 620 in 2015.",
        basis: ['EUR 124 is at most 20% of EUR 620'],
        asks: ['purchase'],
        source,
        evidence: ['price-asked-new-0', 'floor-0'],
      },
    ],
    'on what only the page’s data call new': [
      inField(12_400),
      {
        kind: 'doubt',
        data: { said: { words: 'new', inData: true }, price: priceOf(12_400), maker: 'Ondrasse', floor, share: 0.2 },
        says: "The page’s data say new at EUR 124; Ondrasse's smallest new piece was EUR 620 in 2015.",
        basis: ['EUR 124 is at most 20% of EUR 620'],
        asks: ['purchase'],
        source,
        evidence: ['price-asked-new-0', 'floor-0'],
      },
    ],
    'on a claim that only the page’s data make': [
      {
        ...inField(12_400),
        claims: [
          { ...claim('condition', 'new', { condition: 'new' }), at: { field: 'data', start: 0, end: 3 } } as never,
        ],
      },
      {
        kind: 'doubt',
        data: { said: { words: 'new', inData: true }, price: priceOf(12_400), maker: 'Ondrasse', floor, share: 0.2 },
        says: "The page’s data say new at EUR 124; Ondrasse's smallest new piece was EUR 620 in 2015.",
        basis: ['EUR 124 is at most 20% of EUR 620'],
        asks: ['purchase'],
        claims: ['claim-condition'],
        source,
        evidence: ['price-asked-new-0', 'floor-0'],
      },
    ],
    'against the latest price where nobody says when it was made': [
      withFloors(null),
      {
        kind: 'doubt',
        data: {
          said,
          price: priceOf(12_400),
          maker: 'Ondrasse',
          floor,
          share: 0.2,
        },
        says: "The listing says “brand new” at EUR 124; Ondrasse's smallest new piece was EUR 620 in 2015.",
        basis: ['EUR 124 is at most 20% of EUR 620'],
        asks: ['purchase'],
        claims: ['claim-condition'],
        source: 'maker file of Ondrasse: smallest new price of 2015',
        evidence: ['price-asked-new-0', 'floor-1'],
      },
    ],
  },
  silent: {
    'at half the price': asking(31_000, 'EUR'),
    'at half the price in another currency': asking(20_000, 'USD'),
    'at a third of the price of its time': withFloors(2003),
    'at a third of the oldest price for a piece that is older': withFloors(1990),
  },
  declines: {
    'on a used piece': [asking(5_000, 'EUR', 'used'), 'not-applicable', 'not-called-new'],
    'on a field that calls it used': [
      facts({ listing: withPhotos(1, { price: stated(priceOf(100)), condition: stated('used' as const) }) }),
      'not-applicable',
      'not-called-new',
    ],
    'without a price': [facts(), 'cannot-tell', 'not-stated'],
    'without its currency': [asking(5_000, null), 'cannot-tell', 'price-without-like'],
    'where the file has no prices': [
      judgedBy(asking(5_000, 'EUR'), { ...ondrasse, prices: [] }),
      'not-applicable',
      'maker-file-silent',
    ],
    'where the file has prices of used pieces only': [
      judgedBy(asking(5_000, 'EUR'), {
        ...ondrasse,
        prices: [{ condition: 'used', least: 300, currency: 'EUR', year: 2015 }],
      }),
      'not-applicable',
      'maker-file-without-price',
    ],
  },
  limits: {
    implausibleShare: {
      is: 1 / 3,
      step: 1 / 60_000,
      given: (share) => judgedBy(asking(share * 60_000, 'EUR'), roundFloor),
      under: 'doubt',
      at: 'silent',
      over: 'silent',
    },
  },
});
