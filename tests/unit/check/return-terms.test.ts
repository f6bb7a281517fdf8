import { describe, expect, it } from 'vitest';
import { returnTerms } from '../../../src/check/return-terms';
import { claim, facts, said, stated, withPhotos } from './sample';

describe('return-terms', () => {
  it('misses return terms', () => {
    expect(said(returnTerms, facts())).toEqual(['gap: The listing states no return terms.']);
  });
  it('agrees with returns and their days', () => {
    const returns = stated({ accepted: true, days: 14, words: '14 day returns' });
    expect(said(returnTerms, facts({ listing: withPhotos(1, { returns }) }))).toEqual([
      'agreement: The listing accepts returns within 14 days: “14 day returns”.',
    ]);
  });
  it('says that returns are refused', () => {
    expect(said(returnTerms, facts({ claims: [claim('returns', 'no returns', { accepted: false })] }))).toEqual([
      'gap: The listing takes no returns: “no returns”.',
    ]);
  });
});
