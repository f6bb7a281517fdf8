import { describe, expect, it } from 'vitest';
import { newPricePlausible } from '../../../src/check/new-price-plausible';
import { claim, facts, madeIn, ondrasse, onlyFinding, said, stated, withPhotos } from './sample';

describe('new-price-plausible', () => {
  const asking = (minor: number, currency: string | null, condition: 'new' | 'used' = 'new') =>
    facts({
      claims: [claim('condition', condition === 'new' ? 'brand new' : 'well used', { condition })],
      listing: withPhotos(1, {
        price: stated({
          kind: 'sale' as const,
          minor,
          exponent: 2,
          currency,
          currencies: currency ? [currency] : ['EUR', 'USD'],
        }),
      }),
    });
  it('doubts a new piece at a fifth of the smallest new price', () => {
    expect(said(newPricePlausible, asking(12_400, 'EUR'))).toEqual([
      "doubt: The listing says “brand new” at EUR 124; Ondrasse's smallest new piece was EUR 620 in 2015.",
    ]);
  });
  it('compares another currency by the rates that favour the seller', () => {
    expect(onlyFinding(newPricePlausible, asking(14_000, 'USD')).basis).toEqual([
      'USD 140 is at most 27% of EUR 620',
      'exchange rates from memory, not verified',
    ]);
    expect(said(newPricePlausible, asking(20_000, 'USD'))).toEqual(['silent']);
  });
  it('is silent at half the price and does not apply to a used piece', () => {
    expect(said(newPricePlausible, asking(31_000, 'EUR'))).toEqual(['silent']);
    expect(said(newPricePlausible, asking(5_000, 'EUR', 'used'))).toEqual([
      'not-applicable: the listing does not call the piece new or unused',
    ]);
  });
  it('cannot tell without a price or its currency', () => {
    expect(said(newPricePlausible, facts())).toEqual(['cannot-tell: the page does not state the price']);
    expect(said(newPricePlausible, asking(5_000, null))).toEqual([
      "cannot-tell: 50 cannot be compared with the maker file's prices",
    ]);
  });
  it('takes the price of the time, in the same currency where the file has one', () => {
    const newPriceFloor = [
      { amount: 300, currency: 'EUR', year: 2000 },
      { amount: 620, currency: 'EUR', year: 2015 },
      { amount: 100, currency: 'GBP', year: 2015 },
    ];
    const maker = { ...ondrasse, trade: { newPriceFloor } };
    const given = { ...asking(12_400, 'EUR'), maker };
    expect(onlyFinding(newPricePlausible, given).kind).toBe('doubt');
    const old = { ...given, claims: [...given.claims, madeIn(2003)] };
    expect(said(newPricePlausible, old)).toEqual(['silent']);
  });
});
