import { describe, expect, it } from 'vitest';
import { markAgainstCodeDate } from '../../../src/check/mark-against-code-date';
import { claim, facts, kv0915, onlyFinding, said } from './sample';
import { markRead } from './sample-marks';

describe('mark-against-code-date', () => {
  const patent = (rest = {}) => markRead({ spans: [{ from: '1998-01-01', to: null, precision: 'range' }], ...rest });
  it('contradicts a code from before a hard mark on the piece', () => {
    expect(said(markAgainstCodeDate, facts({ marks: [patent()], decodings: [kv0915] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV0915: January 1995, Belgium; photo 1 shows “Pat. 5,700,000”: from 1998.',
    ]);
  });
  it('leaves out the mark of a fastener that the seller says was replaced', () => {
    const zip = claim('replaced', 'zip replaced in 2018', { parts: ['zip'] });
    const given = facts({ marks: [patent({ mark: 'fastener' })], decodings: [kv0915], claims: [zip] });
    expect(said(markAgainstCodeDate, given)).toEqual(['not-applicable: no public mark that dates was found']);
  });
  it('only doubts with a soft mark or a quoted code', () => {
    const quoted = { ...kv0915, from: { kind: 'claim' as const, claimId: 'c' } };
    expect(
      onlyFinding(markAgainstCodeDate, facts({ marks: [patent({ strength: 'soft' })], decodings: [kv0915] })).kind,
    ).toBe('doubt');
    expect(onlyFinding(markAgainstCodeDate, facts({ marks: [patent()], decodings: [quoted] })).kind).toBe('doubt');
  });
  it('agrees with a mark that dates both ends, and cannot tell from an unclear stamp', () => {
    const same = patent({ spans: [{ from: '1990-01-01', to: '1999-12-31', precision: 'range' }] });
    expect(onlyFinding(markAgainstCodeDate, facts({ marks: [same], decodings: [kv0915] })).kind).toBe('agreement');
    expect(said(markAgainstCodeDate, facts({ marks: [same], decodings: [{ ...kv0915, accepted: false }] }))[0]).toMatch(
      /^cannot-tell/,
    );
  });
});
