import { describe, expect, it } from 'vitest';
import { claimsChanged } from '../../../src/check/claims-changed';
import type { PreviousLook } from '../../../src/check/types';
import { claim, facts, madeIn, said } from './sample';

describe('claims-changed', () => {
  const look = (rest: Partial<PreviousLook> = {}): PreviousLook => ({
    readAt: '2026-01-02T10:00:00Z',
    title: 'Ondrasse bag',
    price: null,
    seller: null,
    photos: [],
    claims: [],
    ...rest,
  });

  it('names what was said and what is said now', () => {
    expect(said(claimsChanged, facts({ previous: look({ claims: [madeIn(1987)] }), claims: [madeIn(1995)] }))).toEqual([
      'doubt: On 2 January 2026 the listing gave the date of making as “made in 1987”; now it says “made in 1995”.',
    ]);
  });
  it('is silent when the same is said in other words, or no more', () => {
    const other = { ...madeIn(1987), words: 'of 1987' };
    expect(said(claimsChanged, facts({ previous: look({ claims: [madeIn(1987)] }), claims: [other] }))).toEqual([
      'silent',
    ]);
    expect(said(claimsChanged, facts({ previous: look({ claims: [madeIn(1987)] }) }))).toEqual(['silent']);
  });
  it('quotes what was said first of several, then and now', () => {
    const then = [
      { ...madeIn(1987), id: 'a' },
      { ...madeIn(1988), id: 'b', words: 'of 1988' },
    ];
    const now = [
      { ...madeIn(1995), id: 'c' },
      { ...madeIn(1996), id: 'd', words: 'of 1996' },
    ];
    expect(claimsChanged.judge(facts({ previous: look({ claims: then }), claims: now }))).toMatchObject({
      findings: [{ data: { before: 'made in 1987', now: 'made in 1995' }, claims: ['c'] }],
    });
  });
  it('does not apply at the first look', () => {
    expect(said(claimsChanged, facts({ claims: [claim('origin', 'made in Italy', { place: 'IT' })] }))[0]).toMatch(
      /^not-applicable/,
    );
  });
});
