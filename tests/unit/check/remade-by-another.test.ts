import { describe, expect, it } from 'vitest';
import { remadeByAnother } from '../../../src/check/remade-by-another';
import { factsSaying, said } from './sample';

describe('remade-by-another', () => {
  it.each([
    ['Crossbody upcycled from a designer tote', 'doubt: The listing says “upcycled”.'],
    ['Etui, Upcycling aus einer Handtasche', 'doubt: The listing says “Upcycling”.'],
    ['古い鞄の革をリメイクしたポーチ', 'doubt: The listing says “リメイク”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(remadeByAnother, factsSaying(words))).toEqual([statement]);
  });
  it.each(['Made from one piece of leather', 'This is not upcycled', 'Is it upcycled?', 'Reworked photos'])(
    'is silent on %j',
    (words) => {
      expect(said(remadeByAnother, factsSaying(words))).toEqual(['silent']);
    },
  );
});
