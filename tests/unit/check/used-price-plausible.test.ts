import { describe, expect, it } from 'vitest';
import { usedPricePlausible } from '../../../src/check/used-price-plausible';
import { claim, facts, onlyFinding, said, stated, withPhotos } from './sample';

describe('used-price-plausible', () => {
  const price = (minor: number, currency: string | null = 'EUR', kind: 'sale' | 'was' = 'sale') => ({
    kind,
    minor,
    exponent: 2,
    currency,
    currencies: currency ? [currency] : [],
  });

  const asking = (minor: number, ...claims: ReturnType<typeof claim>[]) =>
    facts({ claims, listing: withPhotos(1, { price: stated(price(minor)) }) });
  it('doubts a used piece for next to nothing', () => {
    expect(said(usedPricePlausible, asking(3_500))).toEqual([
      "doubt: EUR 35 is less than a fifteenth of Ondrasse's smallest new price (EUR 620 in 2015), and the listing names no damage.",
    ]);
  });
  it('rests on its rule, and on the rates where the currencies differ', () => {
    const rule = 'Even used, a piece rarely goes for less than a fifteenth of the maker’s smallest new price.';
    expect(onlyFinding(usedPricePlausible, asking(3_500)).basis).toEqual([rule]);
    const dollars = facts({ listing: withPhotos(1, { price: stated(price(3_500, 'USD')) }) });
    const { basis } = onlyFinding(usedPricePlausible, dollars);
    expect([basis[0], basis.length]).toEqual([rule, 2]);
  });
  it('is silent at a usual price and for a damaged piece', () => {
    expect(said(usedPricePlausible, asking(15_000))).toEqual(['silent']);
    expect(
      said(usedPricePlausible, asking(3_500, claim('condition', 'torn lining', { condition: 'damaged' }))),
    ).toEqual(['silent']);
  });
  it('leaves new pieces to their own check, and cannot tell without a price', () => {
    expect(said(usedPricePlausible, asking(3_500, claim('condition', 'brand new', { condition: 'new' })))[0]).toMatch(
      /^not-applicable/,
    );
    expect(said(usedPricePlausible, facts())).toEqual(['cannot-tell: the page does not state the price']);
  });
});
