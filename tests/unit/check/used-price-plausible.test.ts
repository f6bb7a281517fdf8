import { usedPricePlausible } from '../../../src/check/used-price-plausible';
import type { FilePrice } from '../../../src/maker/types';
import { testRule } from '../../rule-tester';
import { claim, facts, judgedBy, ondrasse, priceOf, stated, withPhotos } from './sample';

const asking = (minor: number, ...claims: ReturnType<typeof claim>[]) =>
  facts({ claims, listing: withPhotos(1, { price: stated(priceOf(minor)) }) });
const called = (condition: 'new' | 'unused' | 'worn' | 'damaged' | 'used') =>
  asking(3_500, claim('condition', 'as said', { condition }));
const inField = (condition: 'new' | 'worn') =>
  facts({ listing: withPhotos(1, { price: stated(priceOf(3_500)), condition: stated(condition) }) });

const rule = 'Even used, a piece rarely goes for less than a fifteenth of the maker’s smallest new price.';
const floor = { amount: 620, currency: 'EUR', year: 2015 };
const source = 'maker file of Ondrasse: smallest new price of 2015 (source: invented price list)';
const dollars = facts({ listing: withPhotos(1, { price: stated(priceOf(3_500, 'USD')) }) });
const told = {
  kind: 'doubt' as const,
  data: { price: priceOf(3_500), maker: 'Ondrasse', floor },
  says: "EUR 35 is less than a fifteenth of Ondrasse's smallest new price (EUR 620 in 2015), and the listing names no damage.",
  basis: [rule],
  asks: ['purchase'],
  source,
};
/** A price of which a fifteenth is a whole sum. */
/** What pieces in the same condition cost, beside a new price that alone would raise no doubt. */
const usedPrices = {
  ...ondrasse,
  prices: [
    { condition: 'new' as const, least: 900, currency: 'EUR', year: 2015 },
    { condition: 'used' as const, least: 600, most: 800, currency: 'EUR', year: 2024, sources: ['sales seen'] },
    { condition: 'used' as const, least: 5_000, currency: 'EUR', year: 1990 },
    { condition: 'worn' as const, least: 4_000, currency: 'EUR', year: 2024 },
    {
      model: 'Carryall 30',
      condition: 'used' as const,
      least: 900,
      currency: 'EUR',
      year: 2024,
      sources: ['auctions'],
    },
  ],
};
const roundFloor = { ...ondrasse, prices: [{ condition: 'new' as const, least: 600, currency: 'EUR', year: 2015 }] };
const floors: FilePrice[] = [
  { condition: 'new', least: 620, currency: 'EUR', year: 2015 },
  { condition: 'new', least: 300, currency: 'EUR', year: 2000 },
];

testRule(usedPricePlausible, {
  speaks: {
    'on less than a third of what pieces in this condition cost at least': [
      judgedBy(asking(15_000, claim('condition', 'used', { condition: 'used' })), usedPrices),
      {
        kind: 'doubt',
        data: {
          price: priceOf(15_000),
          maker: 'Ondrasse',
          floor: { amount: 600, currency: 'EUR', year: 2024 },
          like: true,
        },
        says: 'EUR 150 is less than a third of what the file of Ondrasse gives as the least for a piece in this condition (EUR 600 in 2024).',
        basis: ['A piece rarely goes for less than a third of what such pieces cost in the same condition.'],
        asks: ['purchase'],
        source: 'maker file of Ondrasse: price of 2024 (source: sales seen)',
        evidence: ['price-asked-used-0', 'floor-like-0'],
      },
    ],
    'on less than a third of what this model costs in this condition': [
      judgedBy(
        facts({
          claims: [
            claim('condition', 'used', { condition: 'used' }),
            claim('model', 'Carryall 30', { model: 'Carryall 30' }),
          ],
          listing: withPhotos(1, { price: stated(priceOf(25_000)) }),
        }),
        usedPrices,
      ),
      {
        kind: 'doubt',
        data: {
          price: priceOf(25_000),
          maker: 'Ondrasse',
          floor: { amount: 900, currency: 'EUR', year: 2024, model: 'Carryall 30' },
          like: true,
        },
        says: 'EUR 250 is less than a third of what the file of Ondrasse gives as the least for Carryall 30 in this condition (EUR 900 in 2024).',
        basis: ['A piece rarely goes for less than a third of what such pieces cost in the same condition.'],
        asks: ['purchase'],
        source: 'maker file of Ondrasse: price of 2024 (source: auctions)',
        evidence: ['price-asked-used-0', 'floor-like-0'],
      },
    ],
    'on a piece for next to nothing': [asking(3_500), { ...told, evidence: ['price-asked-used-0', 'floor-0'] }],
    'on one that is called used': [called('used'), { ...told, evidence: ['price-asked-used-0', 'floor-0'] }],
    'by the rates that favour the seller where the currency is another': [
      dollars,
      {
        ...told,
        data: { price: priceOf(3_500, 'USD'), maker: 'Ondrasse', floor },
        says: "USD 35 is less than a fifteenth of Ondrasse's smallest new price (EUR 620 in 2015), and the listing names no damage.",
        basis: [rule, 'exchange rates from memory, not verified'],
        evidence: ['price-asked-used-0', 'floor-0'],
      },
    ],
  },
  silent: {
    'at a usual price': asking(15_000),
    'on a worn piece': called('worn'),
    'on a damaged piece': called('damaged'),
    'on a piece that a field calls worn': inField('worn'),
    'against the price that favours the seller': judgedBy(asking(2_100), {
      ...ondrasse,
      prices: floors,
    }),
    'where the price asked is an earlier one': facts({
      listing: withPhotos(1, { price: stated(priceOf(3_500, 'EUR', 'was')) }),
    }),
  },
  declines: {
    'on a new piece, which has its own check': [called('new'), 'not-applicable', 'called-new'],
    'on an unused piece': [called('unused'), 'not-applicable', 'called-new'],
    'on one that a field calls new': [inField('new'), 'not-applicable', 'called-new'],
    'without a price': [facts(), 'cannot-tell', 'not-stated'],
    'without a currency': [
      facts({ listing: withPhotos(1, { price: stated(priceOf(3_500, null)) }) }),
      'cannot-tell',
      'price-without-like',
    ],
    'where the file has no prices': [
      judgedBy(asking(3_500), { ...ondrasse, prices: [] }),
      'not-applicable',
      'maker-file-silent',
    ],
  },
  limits: {
    implausibleShare: {
      is: 1 / 15,
      step: 1 / 60_000,
      given: (share) => judgedBy(asking(share * 60_000), roundFloor),
      under: 'doubt',
      at: 'silent',
      over: 'silent',
    },
    implausibleShareOfLike: {
      is: 1 / 3,
      step: 1 / 60_000,
      given: (share) => judgedBy(asking(share * 60_000, claim('condition', 'used', { condition: 'used' })), usedPrices),
      under: 'doubt',
      at: 'silent',
      over: 'silent',
    },
  },
});
