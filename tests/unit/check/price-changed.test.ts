import { describe, expect, it } from 'vitest';
import { priceChanged } from '../../../src/check/price-changed';
import type { PreviousLook } from '../../../src/check/types';
import { facts, said, stated, withPhotos } from './sample';

describe('price-changed', () => {
  const look = (rest: Partial<PreviousLook> = {}): PreviousLook => ({
    readAt: '2026-01-02T10:00:00Z',
    title: 'Ondrasse bag',
    price: null,
    seller: null,
    photos: [],
    claims: [],
    ...rest,
  });

  const price = (minor: number, currency: string | null = 'EUR', kind: 'sale' | 'was' = 'sale') => ({
    kind,
    minor,
    exponent: 2,
    currency,
    currencies: currency ? [currency] : [],
  });

  const fall = (before: number, now: number) =>
    facts({ previous: look({ price: price(before) }), listing: withPhotos(1, { price: stated(price(now)) }) });
  it('doubts a fall by half', () => {
    expect(said(priceChanged, fall(100_000, 50_000))).toEqual([
      'doubt: The price fell from EUR 1000 on 2 January 2026 to EUR 500, by 50%.',
    ]);
  });
  it('is silent on a small fall and a rise', () => {
    expect(said(priceChanged, fall(100_000, 80_000))).toEqual(['silent']);
    expect(said(priceChanged, fall(50_000, 80_000))).toEqual(['silent']);
  });
  it('does not apply at the first look', () => {
    expect(said(priceChanged, facts())).toEqual(['cannot-tell: the page does not state the price']);
    expect(said(priceChanged, facts({ listing: withPhotos(1, { price: stated(price(1)) }) }))).toEqual([
      'not-applicable: this is the first look at the listing',
    ]);
  });
});
