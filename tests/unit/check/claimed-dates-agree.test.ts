import { describe, expect, it } from 'vitest';
import { claimedDatesAgree } from '../../../src/check/claimed-dates-agree';
import { facts, made, madeIn, onlyFinding, said } from './sample';

describe('claimed-dates-agree', () => {
  const again = (year: number) => ({ ...madeIn(year), id: `claim-${year}` });
  it('doubts two exact years', () => {
    expect(said(claimedDatesAgree, facts({ claims: [madeIn(1987), again(1995)] }))).toEqual([
      'doubt: The listing says “made in 1987” and also “made in 1995”.',
    ]);
  });
  it('agrees when a year lies in the decade', () => {
    const nineties = { ...made('1990s', '1990', '1999', { precision: 'decade' }), id: 'decade' };
    expect(said(claimedDatesAgree, facts({ claims: [nineties, again(1995)] }))).toEqual([
      'agreement: The dates of the listing agree: “1990s” (the 1990s), “made in 1995”.',
    ]);
  });
  it('lets loose dates lie some years apart', () => {
    const eighties = { ...made('1980s', '1980', '1989', { precision: 'decade' }), id: 'decade' };
    expect(said(claimedDatesAgree, facts({ claims: [eighties, again(1992)] }))).toEqual(['silent']);
    expect(onlyFinding(claimedDatesAgree, facts({ claims: [eighties, again(2001)] })).kind).toBe('doubt');
  });
  it('does not apply to one date', () => {
    expect(said(claimedDatesAgree, facts({ claims: [madeIn(1987)] }))).toEqual([
      'not-applicable: the listing gives fewer than two dates',
    ]);
  });
});
