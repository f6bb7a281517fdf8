import { describe, expect, it } from 'vitest';
import { traderStated } from '../../../src/check/trader-stated';
import { emptyListing, facts, priceOf, said, stated, withPhotos } from './sample';

describe('trader-stated', () => {
  type Seller = ReturnType<typeof facts>['listing']['seller'];
  const seller = (rest: Partial<Seller>, more = {}) =>
    facts({ listing: withPhotos(1, { seller: { ...emptyListing.seller, ...rest }, ...more }) });

  const pounds = { price: stated(priceOf(30_000, 'GBP')) };
  it('misses what kind of seller it is', () => {
    expect(said(traderStated, seller({}, pounds))).toEqual([
      'gap: The page does not say whether the seller is a private person or a business.',
    ]);
  });
  it('does not apply where another law holds, and cannot tell where the page shows no market', () => {
    const yen = { price: stated(priceOf(30_000, 'JPY')) };
    expect(said(traderStated, seller({}, yen))[0]).toMatch(/^not-applicable/);
    expect(said(traderStated, seller({}))[0]).toMatch(/^cannot-tell/);
  });
  it('is silent when the page says it', () => {
    expect(said(traderStated, seller({ trader: stated('private' as const) }))).toEqual(['silent']);
  });
});
