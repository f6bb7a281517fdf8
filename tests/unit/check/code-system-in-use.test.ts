import { describe, expect, it } from 'vitest';
import { codeSystemInUse } from '../../../src/check/code-system-in-use';
import { monthSpan } from '../../../src/span';
import { decoded, facts, kv0915, onlyFinding, reading, said } from './sample';

describe('code-system-in-use', () => {
  const of = (year: number) => decoded('KV0915', [reading('KV0915', monthSpan(year, 1))]);
  it('is silent while the system was in use', () => {
    expect(said(codeSystemInUse, facts({ decodings: [kv0915] }))).toEqual(['silent']);
  });
  it('contradicts a date years outside the period of the system', () => {
    expect(said(codeSystemInUse, facts({ decodings: [of(1985)] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV0915: January 1985 by the system “interleaved month”, which Ondrasse used from 1990 to 2006.',
    ]);
  });
  it('only doubts within a year of the period', () => {
    expect(onlyFinding(codeSystemInUse, facts({ decodings: [of(1989)] })).kind).toBe('doubt');
  });
  it('is silent when another likely reading was in use', () => {
    const both = decoded('KV0915', [
      reading('KV0915', monthSpan(1985, 1), { probability: 0.5 }),
      reading('KV0915', monthSpan(1995, 1), { probability: 0.4 }),
    ]);
    expect(said(codeSystemInUse, facts({ decodings: [both] }))).toEqual(['silent']);
  });
});
