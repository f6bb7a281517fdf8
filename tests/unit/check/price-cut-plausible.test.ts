import { describe, expect, it } from 'vitest';
import { priceCutPlausible } from '../../../src/check/price-cut-plausible';
import { facts, said, stated, withPhotos } from './sample';

describe('price-cut-plausible', () => {
  const price = (minor: number, currency: string | null = 'EUR', kind: 'sale' | 'was' = 'sale') => ({
    kind,
    minor,
    exponent: 2,
    currency,
    currencies: currency ? [currency] : [],
  });

  const cut = (sale: number, was: number, currency = 'EUR') =>
    facts({ listing: withPhotos(1, { price: [...stated(price(sale)), ...stated(price(was, currency, 'was'))] }) });
  it('doubts a cut by four fifths', () => {
    expect(said(priceCutPlausible, cut(20_000, 100_000))).toEqual([
      'doubt: The price was cut from EUR 1000 to EUR 200, by 80%.',
    ]);
  });
  it('is silent on a cut by half, and on a rise', () => {
    expect(said(priceCutPlausible, cut(50_000, 100_000))).toEqual(['silent']);
    expect(said(priceCutPlausible, cut(50_000, 10_000))).toEqual(['silent']);
  });
  it('cannot tell across currencies and does not apply without an earlier price', () => {
    expect(said(priceCutPlausible, cut(20_000, 100_000, 'USD'))).toEqual([
      'cannot-tell: the two prices are in different currencies',
    ]);
    expect(said(priceCutPlausible, facts({ listing: withPhotos(1, { price: stated(price(1)) }) }))[0]).toMatch(
      /^not-applicable/,
    );
  });
});
