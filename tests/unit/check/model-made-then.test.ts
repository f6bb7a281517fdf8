import { describe, expect, it } from 'vitest';
import type { Facts } from '../../../src/check';
import { modelMadeThen } from '../../../src/check/model-made-then';
import { claim, facts, judgedBy, kv0915, madeIn, ondrasse, said } from './sample';

describe('model-made-then', () => {
  const carryall = claim('model', 'Carryall 30', { model: 'Carryall 30' });
  it('agrees inside the years of the model', () => {
    expect(said(modelMadeThen, facts({ claims: [carryall], decodings: [kv0915] }))).toEqual([
      'agreement: Ondrasse made the Carryall 30 from 1985 to 2012, and the stamp in photo 1 reads KV0915 (January 1995).',
    ]);
  });
  it('doubts years outside, and lets one year pass', () => {
    expect(said(modelMadeThen, facts({ claims: [carryall, madeIn(1978)] }))).toEqual([
      'doubt: Ondrasse made the Carryall 30 from 1985 to 2012, but it is said to be of “made in 1978”.',
    ]);
    expect(said(modelMadeThen, facts({ claims: [carryall, madeIn(1984)] }))).toEqual(['silent']);
  });
  it('tells all the years of a model that was made again', () => {
    const runs = (...years: [string, string][]) =>
      judgedBy(facts({ claims: [carryall, madeIn(1978)] }), {
        ...ondrasse,
        models: [{ name: 'Carryall 30', runs: years.map((made) => ({ made })) }],
      });
    const spanOf = ([from, to]: [string, string]) =>
      expect.objectContaining({ from: `${from}-01-01`, to: `${to}-12-31` });
    const first: [string, string] = ['1985', '1990'];
    const again: [string, string] = ['2001', '2004'];
    const dataOf = (given: Facts) => {
      const outcome = modelMadeThen.judge(given);
      return 'findings' in outcome ? outcome.findings.map(({ data }) => [data.made, data.again]) : outcome;
    };
    expect(dataOf(runs(first))).toEqual([[spanOf(first), undefined]]);
    expect(dataOf(runs(first, again))).toEqual([[spanOf(first), [spanOf(again)]]]);
  });
  it('cannot tell without a date, and does not apply without a model', () => {
    expect(said(modelMadeThen, facts({ claims: [carryall] }))).toEqual([
      'cannot-tell: neither a code nor the listing gives a date',
    ]);
    expect(said(modelMadeThen, facts({ decodings: [kv0915] }))).toEqual([
      'not-applicable: the listing names no model with known years',
    ]);
  });
});
