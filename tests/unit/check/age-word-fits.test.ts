import { describe, expect, it } from 'vitest';
import { ageWordFits } from '../../../src/check/age-word-fits';
import { yearSpan } from '../../../src/span';
import { testRule } from '../../rule-tester';
import { claim, facts, kv0915, madeIn, said } from './sample';

const called = (word: 'vintage' | 'antique') => (years: number) =>
  facts({ claims: [claim('age-word', word, { word, polarity: 'is' }), madeIn(2026 - years)] });
const turns = { step: 1, under: 'doubt', at: 'silent', over: 'silent' } as const;

testRule(ageWordFits, {
  speaks: {
    'on “vintage” for a piece of ten years': [
      called('vintage')(10),
      {
        kind: 'doubt',
        data: { words: 'vintage', least: 20, dated: { claim: { words: 'made in 2016', span: { ...yearSpan(2016) } } } },
        says: 'The listing says “vintage”, which is at least 20 years old, but it is said to be of “made in 2016”.',
        basis: ['A piece is called vintage from about 20 years on, and antique from about 100.'],
        asks: ['made-date'],
        claims: ['claim-age-word', 'claim-made'],
        evidence: ['age-claim-age-word'],
      },
    ],
  },
  silent: { 'on “vintage” for a piece of thirty years': called('vintage')(30) },
  limits: {
    vintage: { ...turns, is: 20, given: called('vintage') },
    antique: { ...turns, is: 100, given: called('antique') },
  },
});

describe('age-word-fits', () => {
  const vintage = claim('age-word', 'vintage', { word: 'vintage', polarity: 'is' });
  it('doubts “vintage” on a piece of ten years', () => {
    expect(said(ageWordFits, facts({ claims: [vintage, madeIn(2016)] }))).toEqual([
      'doubt: The listing says “vintage”, which is at least 20 years old, but it is said to be of “made in 2016”.',
    ]);
  });
  it('is silent on “vintage” for a piece of thirty years', () => {
    expect(said(ageWordFits, facts({ claims: [vintage], decodings: [kv0915] }))).toEqual(['silent']);
  });
  it('measures the older of two words, and leaves out what the seller denies', () => {
    const antique = claim('age-word', 'genuine antique', { word: 'antique', polarity: 'is' });
    expect(said(ageWordFits, facts({ claims: [vintage, antique], decodings: [kv0915] }))[0]).toContain(
      '“genuine antique”, which is at least 100 years old',
    );
    expect(
      said(ageWordFits, facts({ claims: [{ ...vintage, polarity: 'is-not' } as typeof vintage, madeIn(2016)] })),
    ).toEqual(['not-applicable: the listing uses neither word']);
  });
  it('cannot tell without a date and does not apply without the word', () => {
    expect(said(ageWordFits, facts({ claims: [vintage] }))).toEqual([
      'cannot-tell: neither a code nor the listing gives a date',
    ]);
    expect(said(ageWordFits, facts())).toEqual(['not-applicable: the listing uses neither word']);
  });
});
