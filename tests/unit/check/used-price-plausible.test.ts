import { usedPricePlausible } from '../../../src/check/used-price-plausible';
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
const roundFloor = { ...ondrasse, trade: { newPriceFloor: [{ amount: 600, currency: 'EUR', year: 2015 }] } };
const floors = [
  { amount: 620, currency: 'EUR', year: 2015 },
  { amount: 300, currency: 'EUR', year: 2000 },
];

testRule(usedPricePlausible, {
  speaks: {
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
      trade: { newPriceFloor: floors },
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
      judgedBy(asking(3_500), { ...ondrasse, trade: {} }),
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
  },
});
