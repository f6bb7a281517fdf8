import { describe, expect, it } from 'vitest';
import { sellerRecord } from '../../../src/check/seller-record';
import { monthSpan, yearSpan } from '../../../src/span';
import { emptyListing, facts, said, stated, withPhotos } from './sample';

describe('seller-record', () => {
  type Seller = ReturnType<typeof facts>['listing']['seller'];
  const seller = (rest: Partial<Seller>) =>
    facts({ listing: withPhotos(1, { seller: { ...emptyListing.seller, ...rest } }) });
  const joined = (month: number, year: number) => stated(monthSpan(year, month));
  it('agrees with a long and good record', () => {
    const good = seller({
      memberSince: joined(3, 2016),
      rating: stated({ share: 0.99, count: 214, words: '99% (214)' }),
      salesCount: stated(320),
    });
    expect(said(sellerRecord, good)).toEqual([
      'agreement: The seller is a member since March 2016, rated “99% (214)” and with 320 sales.',
    ]);
  });
  it('says when somebody joined no finer than the page does', () => {
    expect(said(sellerRecord, seller({ memberSince: stated(yearSpan(2016)) }))).toEqual([
      'agreement: The seller is a member since 2016.',
    ]);
    const open = { ...monthSpan(2016, 3), to: null, precision: 'range' as const };
    expect(said(sellerRecord, seller({ memberSince: stated(open) }))).toEqual([
      'agreement: The seller is a member since March 2016.',
    ]);
  });
  it('says what is short of a new account with few ratings, and doubts nobody for it', () => {
    const fresh = seller({ memberSince: joined(12, 2025), rating: stated({ share: 1, count: 1, words: '1 rating' }) });
    expect(said(sellerRecord, fresh)).toEqual([
      'gap: The seller’s record is short or says little: a member since December 2025 and rated “1 rating”.',
    ]);
    const praised = seller({ rating: stated({ share: 0.992, count: 4, words: '99.2%' }), salesCount: stated(320) });
    expect(said(sellerRecord, praised)).toEqual([
      'gap: The seller’s record is short or says little: rated “99.2%” from 4 ratings.',
    ]);
  });
  it('doubts a low rating by enough buyers, and says what is low about it', () => {
    expect(said(sellerRecord, seller({ rating: stated({ share: 0.8, count: 60, words: '80% positive' }) }))).toEqual([
      'doubt: The seller is rated “80% positive” from 60 ratings, which is less than 85% of the best rating there.',
    ]);
  });
  it('does not doubt on a low rating of which nobody says how many gave it', () => {
    expect(said(sellerRecord, seller({ rating: stated({ share: 0.8, count: null, words: '4 / 5' }) }))).toEqual([
      'gap: The seller’s record is short or says little: rated “4 / 5”.',
    ]);
  });
  it('misses a record that the page does not show', () => {
    expect(said(sellerRecord, facts())).toEqual([
      'gap: The page shows no record of the seller: no ratings, no sales, no date of joining.',
    ]);
  });
});
