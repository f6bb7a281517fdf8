import { describe, expect, it } from 'vitest';
import { stampCloseUp } from '../../../src/check/stamp-close-up';
import { facts, kv0915, madeIn, onlyFinding, readPhoto, said, stampLine, unreadPhoto, withPhotos } from './sample';

describe('stamp-close-up', () => {
  it('misses the stamp in photos that were all read', () => {
    const given = facts({ listing: withPhotos(2), photos: [readPhoto('p1'), readPhoto('p2')] });
    expect(said(stampCloseUp, given)).toEqual(['gap: None of the 2 photos shows the stamp.']);
  });
  it('is silent when a photo shows a stamp, read or not', () => {
    const shown = readPhoto('p1', { lines: [stampLine('p1', 'KV0915')] });
    expect(said(stampCloseUp, facts({ photos: [shown] }))).toEqual(['silent']);
    expect(said(stampCloseUp, facts({ decodings: [{ ...kv0915, accepted: false }] }))).toEqual(['silent']);
  });
  it('still misses it when the code is only quoted', () => {
    const quoted = { ...kv0915, from: { kind: 'claim' as const, claimId: 'c' } };
    expect(onlyFinding(stampCloseUp, facts({ decodings: [quoted] })).kind).toBe('gap');
  });
  it('cannot tell while one photo of two is unread', () => {
    const given = facts({ listing: withPhotos(2), photos: [readPhoto('p1'), unreadPhoto('p2')] });
    expect(said(stampCloseUp, given)).toEqual(['cannot-tell: 1 of 2 photos not read: the file is not an image']);
  });
  it('does not apply to a piece from before the first stamps', () => {
    expect(said(stampCloseUp, facts({ claims: [madeIn(1972)] }))).toEqual([
      'not-applicable: the maker did not yet stamp at the claimed time',
    ]);
  });
});
