import { describe, expect, it } from 'vitest';
import { notThisPiece } from '../../../src/check/not-this-piece';
import { factsSaying, said } from './sample';

describe('not-this-piece', () => {
  it.each([
    [
      'Stock photos, item may vary from photo',
      'doubt: The listing says “Stock photos” and “item may vary from photo”.',
    ],
    ['Symbolfoto', 'doubt: The listing says “Symbolfoto”.'],
    ['イメージ写真です', 'doubt: The listing says “イメージ写真”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(notThisPiece, factsSaying(words))).toEqual([statement]);
  });
  it.each(['The photos show this very bag', 'In stock, photo below'])('is silent on %j', (words) => {
    expect(said(notThisPiece, factsSaying(words))).toEqual(['silent']);
  });
});
