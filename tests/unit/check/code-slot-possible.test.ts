import { describe, expect, it } from 'vitest';
import { codeSlotPossible } from '../../../src/check/code-slot-possible';
import { decoded, facts, kv0915, misfit, nearest, said } from './sample';

describe('code-slot-possible', () => {
  const month19 = (rest = {}) => decoded('KV1995', [], { misfits: [misfit('KV1995')], ...rest });
  it('contradicts a month that does not exist', () => {
    expect(said(codeSlotPossible, facts({ decodings: [month19()] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV1995: month “19” does not exist, expected 01 to 12.',
    ]);
  });
  it('only doubts when a look-alike character explains it', () => {
    expect(said(codeSlotPossible, facts({ decodings: [month19({ nearest: [nearest('KV0995', 0.4)] })] }))).toEqual([
      'doubt: The stamp in photo 1 reads KV1995: month “19” does not exist, expected 01 to 12. KV0995 would read (the third character differs).',
    ]);
  });
  it('only doubts a code that the listing quotes', () => {
    const quoted = month19({ from: { kind: 'claim', claimId: 'c' } });
    expect(said(codeSlotPossible, facts({ decodings: [quoted] }))).toEqual([
      'doubt: The listing quotes the code KV1995: month “19” does not exist, expected 01 to 12.',
    ]);
  });
  it('is silent on a code that reads', () => {
    expect(said(codeSlotPossible, facts({ decodings: [kv0915] }))).toEqual(['silent']);
  });
  it('cannot tell from an unclear stamp', () => {
    expect(said(codeSlotPossible, facts({ decodings: [month19({ accepted: false })] }))[0]).toMatch(/^cannot-tell/);
  });
});
