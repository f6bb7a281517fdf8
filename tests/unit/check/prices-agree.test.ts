import { describe, expect, it } from 'vitest';
import { pricesAgree } from '../../../src/check/prices-agree';
import { facts, said, stated, withPhotos } from './sample';

describe('prices-agree', () => {
  const price = (minor: number, currency: string | null = 'EUR', kind: 'sale' | 'was' = 'sale') => ({
    kind,
    minor,
    exponent: 2,
    currency,
    currencies: currency ? [currency] : [],
  });

  const both = (shown: number, data: number, caveats: string[] = []) =>
    facts({
      listing: withPhotos(1, {
        price: [
          ...stated(price(shown)),
          { value: price(data), origin: 'json-ld' as const, where: 'offers.price', confidence: 0.9, caveats },
        ],
      }),
    });
  it('doubts a page whose data say another price', () => {
    expect(said(pricesAgree, both(54_000, 45_000))).toEqual([
      'doubt: The page shows EUR 540, but its data (json-ld) say EUR 450.',
    ]);
  });
  it('is silent when they agree or the data are known to be stale', () => {
    expect(said(pricesAgree, both(54_000, 54_000))).toEqual(['silent']);
    expect(said(pricesAgree, both(54_000, 45_000, ['stale']))).toEqual(['silent']);
  });
});
