import { describe, expect, it } from 'vitest';
import { markAgainstClaimedDate } from '../../../src/check/mark-against-claimed-date';
import { yearSpan } from '../../../src/span';
import { facts, made, madeIn, onlyFinding, said } from './sample';
import { markRead } from './sample-marks';

describe('mark-against-claimed-date', () => {
  const patent = (rest = {}) => markRead({ spans: [{ from: '1998-01-01', to: null, precision: 'range' }], ...rest });
  it('contradicts an exact year before a hard mark on the piece', () => {
    expect(said(markAgainstClaimedDate, facts({ marks: [patent()], claims: [madeIn(1987)] }))).toEqual([
      'contradiction: Photo 1 shows “Pat. 5,700,000”: from 1998. The listing says “made in 1987”.',
    ]);
  });
  it('only doubts with a soft mark, a mark in the text, or a hedged year', () => {
    const about = made('c. 1987', '1987', '1987', { precision: 'year', about: true });
    for (const given of [
      facts({ marks: [patent({ strength: 'soft' })], claims: [madeIn(1987)] }),
      facts({ marks: [patent({ foundIn: 'listing', photoId: null })], claims: [madeIn(1987)] }),
      facts({ marks: [patent()], claims: [about] }),
    ])
      expect(onlyFinding(markAgainstClaimedDate, given).kind).toBe('doubt');
  });
  it('says when the rule is from memory', () => {
    const memory = patent({ strength: 'soft', verified: false });
    expect(said(markAgainstClaimedDate, facts({ marks: [memory], claims: [madeIn(1987)] }))).toEqual([
      'doubt: Photo 1 shows “Pat. 5,700,000” (rule not verified): from 1998. The listing says “made in 1987”.',
    ]);
  });
  it('agrees with a mark that dates both ends and is silent on one that only bounds', () => {
    expect(
      onlyFinding(
        markAgainstClaimedDate,
        facts({ marks: [patent({ spans: [yearSpan(1987)] })], claims: [madeIn(1987)] }),
      ).kind,
    ).toBe('agreement');
    expect(said(markAgainstClaimedDate, facts({ marks: [patent()], claims: [madeIn(2005)] }))).toEqual(['silent']);
  });
  it('does not apply without marks that date or without a claimed date', () => {
    expect(said(markAgainstClaimedDate, facts({ claims: [madeIn(1987)] }))).toEqual([
      'not-applicable: no public mark that dates was found',
    ]);
    expect(said(markAgainstClaimedDate, facts({ marks: [patent()] }))).toEqual([
      'not-applicable: the listing claims no date',
    ]);
  });
});
