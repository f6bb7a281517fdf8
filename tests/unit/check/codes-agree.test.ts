import { describe, expect, it } from 'vitest';
import { codesAgree } from '../../../src/check/codes-agree';
import { claim, decoded, facts, kv0915, said } from './sample';

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
  it('cannot tell without a read stamp and does not apply without a quote', () => {
    expect(said(codesAgree, facts({ decodings: [quoted('KV0918')] }))).toEqual([
      'cannot-tell: no code was read from a photo to compare with',
    ]);
    expect(said(codesAgree, facts({ decodings: [kv0915] }))).toEqual(['not-applicable: the listing quotes no code']);
  });
});
