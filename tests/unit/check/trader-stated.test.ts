import { describe, expect, it } from 'vitest';
import { traderStated } from '../../../src/check/trader-stated';
import { emptyListing, facts, said, stated, withPhotos } from './sample';

describe('trader-stated', () => {
  type Seller = ReturnType<typeof facts>['listing']['seller'];
  const seller = (rest: Partial<Seller>, more = {}) =>
    facts({ listing: withPhotos(1, { seller: { ...emptyListing.seller, ...rest }, ...more }) });

  it('misses what kind of seller it is', () => {
    expect(said(traderStated, seller({}))).toEqual([
      'gap: The page does not say whether the seller is a private person or a business.',
    ]);
  });
  it('is silent when the page says it', () => {
    expect(said(traderStated, seller({ trader: stated('private' as const) }))).toEqual(['silent']);
  });
});
