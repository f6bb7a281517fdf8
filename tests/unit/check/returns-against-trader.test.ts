import { describe, expect, it } from 'vitest';
import { returnsAgainstTrader } from '../../../src/check/returns-against-trader';
import { emptyListing, facts, said, stated, withPhotos } from './sample';

describe('returns-against-trader', () => {
  type Seller = ReturnType<typeof facts>['listing']['seller'];
  const seller = (rest: Partial<Seller>, more = {}) =>
    facts({ listing: withPhotos(1, { seller: { ...emptyListing.seller, ...rest }, ...more }) });

  const refused = { returns: stated({ accepted: false, days: null, words: 'no returns' }) };
  it('doubts a business that takes no returns', () => {
    expect(said(returnsAgainstTrader, seller({ trader: stated('trader' as const) }, refused))).toEqual([
      'doubt: The seller is a business and says “no returns”.',
    ]);
  });
  it('is silent on a business that does and does not apply to a private seller', () => {
    expect(said(returnsAgainstTrader, seller({ trader: stated('trader' as const) }))).toEqual(['silent']);
    expect(said(returnsAgainstTrader, seller({ trader: stated('private' as const) }, refused))[0]).toMatch(
      /^not-applicable/,
    );
  });
});
