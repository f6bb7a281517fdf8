import { describe, expect, it } from 'vitest';
import { sellerChanged } from '../../../src/check/seller-changed';
import type { PreviousLook } from '../../../src/check/types';
import { emptyListing, facts, said, stated, withPhotos } from './sample';

describe('seller-changed', () => {
  const look = (rest: Partial<PreviousLook> = {}): PreviousLook => ({
    readAt: '2026-01-02T10:00:00Z',
    title: 'Ondrasse bag',
    price: null,
    seller: null,
    photos: [],
    claims: [],
    ...rest,
  });

  const named = (name: string) => withPhotos(1, { seller: { ...emptyListing.seller, name: stated(name) } });
  it('doubts another seller', () => {
    expect(said(sellerChanged, facts({ previous: look({ seller: 'mina' }), listing: named('pavel') }))).toEqual([
      'doubt: On 2 January 2026 the seller was “mina”; now it is “pavel”.',
    ]);
  });
  it('is silent on the same and cannot tell without a name', () => {
    expect(said(sellerChanged, facts({ previous: look({ seller: 'mina' }), listing: named('Mina') }))).toEqual([
      'silent',
    ]);
    expect(said(sellerChanged, facts({ previous: look(), listing: named('Mina') }))[0]).toMatch(/^cannot-tell/);
  });
});
