import { describe, expect, it } from 'vitest';
import { codeBeforeStamping } from '../../../src/check/code-before-stamping';
import { facts, kv0915, made, madeIn, onlyFinding, said } from './sample';

describe('code-before-stamping', () => {
  it('contradicts a code on a piece from before the first stamps', () => {
    expect(said(codeBeforeStamping, facts({ decodings: [kv0915], claims: [madeIn(1972)] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV0915, but the listing says “made in 1972” and Ondrasse stamped only from 1980.',
    ]);
  });
  it('only doubts a decade or a year next to the first stamps', () => {
    const seventies = made('1970s', '1970', '1979', { precision: 'decade' });
    expect(onlyFinding(codeBeforeStamping, facts({ decodings: [kv0915], claims: [seventies] })).kind).toBe('doubt');
    expect(onlyFinding(codeBeforeStamping, facts({ decodings: [kv0915], claims: [madeIn(1979)] })).kind).toBe('doubt');
  });
  it('does not apply to a later piece, or without a code', () => {
    expect(said(codeBeforeStamping, facts({ decodings: [kv0915], claims: [madeIn(1995)] }))).toEqual([
      'not-applicable: the listing claims no date before Ondrasse stamped',
    ]);
    expect(said(codeBeforeStamping, facts({ claims: [madeIn(1972)] }))).toEqual([
      'not-applicable: no code is shown or quoted',
    ]);
  });
  it('leaves a listing that also gives a later date to the check on its dates', () => {
    const later = { ...madeIn(1995), id: 'later' };
    expect(said(codeBeforeStamping, facts({ decodings: [kv0915], claims: [madeIn(1972), later] }))).toEqual([
      'not-applicable: the listing claims no date before Ondrasse stamped',
    ]);
  });
});
