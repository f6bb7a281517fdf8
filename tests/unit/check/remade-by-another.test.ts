import { describe, expect, it } from 'vitest';
import { remadeByAnother } from '../../../src/check/remade-by-another';
import { factsSaying, said } from './sample';

describe('remade-by-another', () => {
  it.each([
    ['Crossbody upcycled from a designer tote', 'doubt: The listing says “upcycled”.'],
    ['Etui, Upcycling aus einer Handtasche', 'doubt: The listing says “Upcycling”.'],
    ["Pochette réalisée à partir d'un ancien sac", "doubt: The listing says “réalisée à partir d'un ancien”."],
    ['Mäppchen, aus einer alten Tasche genäht', 'doubt: The listing says “aus einer alten Tasche genäht”.'],
    ['古い鞄の革をリメイクしたポーチ', 'doubt: The listing says “リメイク”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(remadeByAnother, factsSaying(words))).toEqual([statement]);
  });
  it.each([
    'Made from one piece of leather',
    'This is not upcycled',
    'Is it upcycled?',
    'Reworked photos',
    'Das Futter stammt aus einer alten Tasche',
  ])('is silent on %j', (words) => {
    expect(said(remadeByAnother, factsSaying(words))).toEqual(['silent']);
  });
});
