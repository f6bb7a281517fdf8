import { priceChanged } from '../../../src/check/price-changed';
import type { PreviousLook } from '../../../src/check/types';
import { testRule } from '../../rule-tester';
import { facts, priceOf, stated, withPhotos } from './sample';

const look = (price: PreviousLook['price']): PreviousLook => ({
  readAt: '2026-01-02T10:00:00Z',
  title: 'Ondrasse bag',
  price,
  seller: null,
  photos: [],
  claims: [],
});
const fall = (before: number, now: number, currency: string | null = 'EUR', currencyNow = currency) =>
  facts({
    previous: look(priceOf(before, currency)),
    listing: withPhotos(1, { price: stated(priceOf(now, currencyNow)) }),
  });

testRule(priceChanged, {
  speaks: {
    'on a fall by half': [
      fall(100_000, 50_000),
      {
        kind: 'doubt',
        data: { before: priceOf(100_000), now: priceOf(50_000), readAt: '2026-01-02T10:00:00Z', fall: 0.5 },
        says: 'The price fell from EUR 1000 on 2 January 2026 to EUR 500, by 50%.',
        basis: ['A price that falls by much in a short time has a reason worth knowing.'],
        asks: ['lower-price'],
      },
    ],
  },
  silent: { 'on a small fall': fall(100_000, 80_000), 'on a rise': fall(50_000, 80_000) },
  declines: {
    'without a price': [facts(), 'cannot-tell', 'not-stated'],
    'at the first look': [
      facts({ listing: withPhotos(1, { price: stated(priceOf(1)) }) }),
      'not-applicable',
      'first-look',
    ],
    'where the first look saw no price': [
      { ...fall(1, 1), previous: look(null) },
      'cannot-tell',
      'price-not-comparable',
    ],
    'across currencies': [fall(100_000, 50_000, 'EUR', 'USD'), 'cannot-tell', 'price-not-comparable'],
    'without a currency': [fall(100_000, 50_000, null), 'cannot-tell', 'price-not-comparable'],
  },
  limits: {
    steepFall: {
      is: 0.4,
      step: 0.0001,
      given: (share) => fall(100_000, 100_000 - Math.round(share * 100_000)),
      under: 'silent',
      at: 'silent',
      over: 'doubt',
    },
  },
});
