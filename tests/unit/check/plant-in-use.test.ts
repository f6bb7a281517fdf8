import { describe, expect, it } from 'vitest';
import { plantInUse } from '../../../src/check/plant-in-use';
import { monthSpan, periodSpan, type Span } from '../../../src/span';
import { decoded, facts, kv0915, onlyFinding, reading, said } from './sample';

describe('plant-in-use', () => {
  const of = (year: number) => decoded('KV0915', [reading('KV0915', monthSpan(year, 1))]);
  it('agrees when the workshop worked then', () => {
    expect(said(plantInUse, facts({ decodings: [kv0915] }))).toEqual([
      'agreement: The stamp in photo 1 reads KV0915: workshop KV (Belgium) worked then (1988 to 2003).',
    ]);
  });
  it('contradicts a workshop that closed years before', () => {
    expect(said(plantInUse, facts({ decodings: [of(2006)] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV0915: January 2006, but workshop KV (Belgium) worked 1988 to 2003.',
    ]);
  });
  it('only doubts within a year of its closing', () => {
    expect(onlyFinding(plantInUse, facts({ decodings: [of(2004)] })).kind).toBe('doubt');
  });
  it('only doubts a code that the listing quotes', () => {
    const quoted = { ...of(2006), from: { kind: 'claim' as const, claimId: 'c' } };
    expect(onlyFinding(plantInUse, facts({ decodings: [quoted] })).kind).toBe('doubt');
  });
  it('accepts any of several periods of work', () => {
    const used = [periodSpan(['1950', '1960']), periodSpan(['1990', '2000'])] as Span[];
    const twice = decoded('KV0915', [
      reading('KV0915', monthSpan(1995, 1), { plant: { code: 'KV', place: 'BE', used } }),
    ]);
    expect(onlyFinding(plantInUse, facts({ decodings: [twice] })).kind).toBe('agreement');
  });
  it('does not apply to a code without a workshop', () => {
    const none = decoded('8503', [reading('8503', monthSpan(1985, 3), { plant: null, places: [] })]);
    expect(said(plantInUse, facts({ decodings: [none] }))).toEqual([
      'not-applicable: no code names a workshop and a date',
    ]);
  });
});
