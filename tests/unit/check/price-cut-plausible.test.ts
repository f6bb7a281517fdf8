import { priceCutPlausible } from '../../../src/check/price-cut-plausible';
import { testRule } from '../../rule-tester';
import { claim, facts, priceOf, stated, withPhotos } from './sample';

const cut = (sale: number, was: number, currency = 'EUR') =>
  facts({
    listing: withPhotos(1, { price: [...stated(priceOf(sale)), ...stated(priceOf(was, currency, 'was'))] }),
  });
const rule = 'A “was” price far above the price asked is often invented.';

testRule(priceCutPlausible, {
  speaks: {
    'on a cut by four fifths': [
      cut(20_000, 100_000),
      {
        kind: 'doubt',
        data: { was: priceOf(100_000, 'EUR', 'was'), sale: priceOf(20_000), cut: 0.8 },
        says: 'The price was cut from EUR 1000 to EUR 200, by 80%.',
        basis: [rule],
        asks: ['purchase'],
        evidence: ['price-price-now-0', 'price-price-before-0'],
      },
    ],
    'on a price that only the seller’s words call the earlier one': [
      facts({
        listing: withPhotos(1, { price: stated(priceOf(10_000)) }),
        claims: [claim('price', 'was 1000 EUR', { price: priceOf(100_000, 'EUR', 'was') })],
      }),
      {
        kind: 'doubt',
        data: { was: priceOf(100_000, 'EUR', 'was'), sale: priceOf(10_000), cut: 0.9 },
        says: 'The price was cut from EUR 1000 to EUR 100, by 90%.',
        basis: [rule],
        asks: ['purchase'],
        evidence: ['price-price-now-0', 'price-price-before-0'],
      },
    ],
  },
  silent: { 'on a cut by half': cut(50_000, 100_000), 'on a rise': cut(50_000, 10_000) },
  declines: {
    'across currencies': [cut(20_000, 100_000, 'USD'), 'cannot-tell', 'prices-in-two-currencies'],
    'without an earlier price': [
      facts({ listing: withPhotos(1, { price: stated(priceOf(1)) }) }),
      'not-applicable',
      'no-earlier-price',
    ],
  },
  limits: {
    implausibleCut: {
      is: 0.7,
      step: 0.0001,
      given: (share) => cut(100_000 - Math.round(share * 100_000), 100_000),
      under: 'silent',
      at: 'silent',
      over: 'doubt',
    },
  },
});
