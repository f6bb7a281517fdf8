import { describe, expect, it } from 'vitest';
import { codesAgree } from '../../../src/check/codes-agree';
import { claim, decoded, facts, kv0915, onlyFinding, said } from './sample';

describe('codes-agree', () => {
  const quoted = (code: string) => ({
    ...decoded(code, []),
    id: `quoted-${code}`,
    from: { kind: 'claim' as const, claimId: 'claim-code' },
  });
  const words = claim('code', 'date code KV0918', { code: 'KV0918' });
  it('doubts a quoted code that the stamp is not', () => {
    expect(said(codesAgree, facts({ decodings: [kv0915, quoted('KV0918')], claims: [words] }))).toEqual([
      'doubt: The stamp in photo 1 reads KV0915, but the listing quotes KV0918.',
    ]);
  });
  it('agrees, whatever the separators', () => {
    expect(said(codesAgree, facts({ decodings: [kv0915, quoted('KV 0915')] }))).toEqual([
      'agreement: The stamp in photo 1 reads KV0915, as the listing quotes it.',
    ]);
  });
  it('takes a code in full-width signs for the same code, and one of other digits for another', () => {
    const stamp = decoded('OL0994', []);
    expect(said(codesAgree, facts({ decodings: [stamp, quoted('ＯＬ０９９４')] }))).toEqual([
      'agreement: The stamp in photo 1 reads OL0994, as the listing quotes it.',
    ]);
    expect(said(codesAgree, facts({ decodings: [stamp, quoted('ＯＬ０９９５')] }))).toEqual([
      'doubt: The stamp in photo 1 reads OL0994, but the listing quotes ＯＬ０９９５.',
    ]);
  });
  it('agrees where a character that is left open may be the quoted one, and doubts where it may not', () => {
    const open = [{ kind: 'alike' as const, place: 0, may: ['O', '0'] }];
    const stamp = { ...decoded('O13689', []), open };
    expect(said(codesAgree, facts({ decodings: [stamp, quoted('013689')] }))).toEqual([
      'agreement: The stamp in photo 1 reads 013689, as the listing quotes it.',
    ]);
    expect(said(codesAgree, facts({ decodings: [stamp, quoted('013688')] }))).toEqual([
      'doubt: The stamp in photo 1 reads O13689, but the listing quotes 013688.',
    ]);
  });
  it('cannot tell without a read stamp and does not apply without a quote', () => {
    expect(said(codesAgree, facts({ decodings: [quoted('KV0918')] }))).toEqual([
      'cannot-tell: no code was read from a photo to compare with',
    ]);
    expect(said(codesAgree, facts({ decodings: [kv0915] }))).toEqual(['not-applicable: the listing quotes no code']);
  });
  it('rests on the claim that quotes the code, of which it tells the seller’s own words', () => {
    const other = claim('code', 'code LT0918', { code: 'LT0918' }, 'claim-other');
    const spaced = claim('code', 'date code KV 0918', { code: 'KV 0918' });
    const finding = onlyFinding(codesAgree, facts({ decodings: [kv0915, quoted('KV0918')], claims: [other, spaced] }));
    expect([finding.claims, finding.photos, finding.data]).toMatchObject([
      ['claim-code'],
      ['p1'],
      { quoted: 'KV 0918' },
    ]);
  });
});
