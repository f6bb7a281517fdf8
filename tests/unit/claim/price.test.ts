import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import type { Listing } from '../../../src/listing/types';
import { listingOf } from './listing-of';

describe('the piece by its price', () => {
  type Price = Listing['price'][number]['value'];
  const price = (value: Partial<Price>) => {
    const whole = {
      minor: 45_000,
      exponent: 2,
      currency: 'EUR',
      currencies: ['EUR'],
      kind: 'asking',
      ...value,
    } as Price;
    return { value: whole, origin: 'json-ld' as const, where: 'x', confidence: 0.9 };
  };
  const words = (...prices: ReturnType<typeof price>[]) =>
    findClaims(listingOf('', 'A bag.', null, { price: prices }), []).flatMap((claim) =>
      claim.kind === 'price' ? [claim.words] : [],
    );
  it.each<[Partial<Price>, string]>([
    [{}, '450.00 EUR'],
    [{ minor: 5 }, '0.05 EUR'],
    [{ minor: 123 }, '1.23 EUR'],
    [{ minor: 12_000, exponent: 0, currency: 'JPY' }, '12000 JPY'],
    [{ currency: null, currencies: ['CAD', 'USD'] }, '450.00 CAD/USD'],
  ])('%j without words of its own: %s', (value, said) => expect(words(price(value))).toEqual([said]));
  it('once for each kind, by the first', () => {
    expect(words(price({}), price({ minor: 1 }), price({ minor: 90_000, kind: 'was' }))).toEqual([
      '450.00 EUR',
      '900.00 EUR',
    ]);
  });
});
