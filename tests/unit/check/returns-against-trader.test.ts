import { describe, expect, it } from 'vitest';
import { returnsAgainstTrader } from '../../../src/check/returns-against-trader';
import { emptyListing, facts, priceOf, said, stated, withPhotos } from './sample';

describe('returns-against-trader', () => {
  type Seller = ReturnType<typeof facts>['listing']['seller'];
  const seller = (rest: Partial<Seller>, more = {}) =>
    facts({ listing: withPhotos(1, { seller: { ...emptyListing.seller, ...rest }, ...more }) });

  const refused = { returns: stated({ accepted: false, days: null, words: 'no returns' }) };
  const asking = (currency: string) => ({ price: stated(priceOf(54_000, currency)) });
  const business = { trader: stated('trader' as const) };
  it('doubts a business that takes no returns', () => {
    expect(said(returnsAgainstTrader, seller(business, { ...refused, ...asking('EUR') }))).toEqual([
      'doubt: The seller is a business and says “no returns”.',
    ]);
  });
  it('is silent on a business that does and does not apply to a private seller', () => {
    expect(said(returnsAgainstTrader, seller(business, asking('GBP')))).toEqual(['silent']);
    expect(said(returnsAgainstTrader, seller({ trader: stated('private' as const) }, refused))[0]).toMatch(
      /^not-applicable/,
    );
  });

  it('speaks of a seller in the EU or the UK whatever currency is asked', () => {
    expect(said(returnsAgainstTrader, seller({ ...business, place: stated('Porto, Portugal') }, refused))[0]).toMatch(
      /^doubt/,
    );
    const dollars = { ...refused, ...asking('USD') };
    expect(said(returnsAgainstTrader, seller({ ...business, place: stated('Leeds, UK') }, dollars))[0]).toMatch(
      /^doubt/,
    );
  });
  it.each([
    ['asks yen', {}, asking('JPY')],
    ['asks dollars', {}, asking('USD')],
    ['is in another country', { place: stated('Toronto, Canada') }, asking('EUR')],
    ['is called as a company of another country', { name: stated('Harbour Goods LLC') }, asking('EUR')],
  ])('does not apply to a business that %s', (_, rest, more) => {
    expect(said(returnsAgainstTrader, seller({ ...business, ...rest }, { ...refused, ...more }))[0]).toMatch(
      /^not-applicable: .*whose law/,
    );
  });
  it('cannot tell where the page shows neither country nor currency', () => {
    expect(said(returnsAgainstTrader, seller(business, refused))[0]).toMatch(/^cannot-tell/);
  });
});
