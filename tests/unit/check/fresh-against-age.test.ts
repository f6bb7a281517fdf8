import { describe, expect, it } from 'vitest';
import { freshAgainstAge } from '../../../src/check/fresh-against-age';
import { monthSpan } from '../../../src/span';
import { testRule } from '../../rule-tester';
import { factsSaying, kv0915, said } from './sample';

const aged = (years: number) => factsSaying(`Pale handles. Made in ${2026 - years}.`);

testRule(freshAgainstAge, {
  speaks: {
    'on pale handles after thirty years': [
      factsSaying('Pale handles, used daily', { decodings: [kv0915] }),
      {
        kind: 'doubt',
        data: {
          words: 'Pale handles',
          years: 31,
          dated: { shown: { code: 'KV0915', from: 'photo', photo: 1 }, date: { ...monthSpan(1995, 1) } },
        },
        says: 'The listing says “Pale handles”, but the stamp in photo 1 reads KV0915 (January 1995): about 31 years of age.',
        basis: ['Untreated handle leather and red edge trim darken with the years, and brass dulls.'],
        asks: ['aging'],
        claims: ['fresh-part-02ey07f'],
        photos: ['p1'],
        evidence: ['age-fresh-part-02ey07f'],
      },
    ],
  },
  silent: { 'on a young piece': aged(4) },
  limits: { darkenedYears: { is: 10, step: 1, given: aged, under: 'silent', at: 'doubt', over: 'doubt' } },
});

describe('fresh-against-age', () => {
  it('doubts pale handles after thirty years', () => {
    expect(said(freshAgainstAge, factsSaying('Pale handles, used daily', { decodings: [kv0915] }))).toEqual([
      'doubt: The listing says “Pale handles”, but the stamp in photo 1 reads KV0915 (January 1995): about 31 years of age.',
    ]);
  });
  it('is silent when the listing gives the reason, or the piece is young', () => {
    expect(said(freshAgainstAge, factsSaying('Pale handles, stored in its bag', { decodings: [kv0915] }))).toEqual([
      'silent',
    ]);
    expect(said(freshAgainstAge, factsSaying('Pale handles. Made in 2022.'))).toEqual(['silent']);
  });
  it.each(['never used', 'handles replaced', 'restored', 'dead stock', 'zelden gebruikt, altijd opgeslagen'])(
    'is silent when the seller says %j',
    (why) => {
      expect(said(freshAgainstAge, factsSaying(`Pale handles, ${why}`, { decodings: [kv0915] }))).toEqual(['silent']);
    },
  );
  it('cannot tell without a date and does not apply without the words', () => {
    expect(said(freshAgainstAge, factsSaying('Pale handles'))).toEqual([
      'cannot-tell: neither a code nor the listing gives a date',
    ]);
    expect(said(freshAgainstAge, factsSaying('Dark handles'))[0]).toMatch(/^not-applicable/);
  });
});
