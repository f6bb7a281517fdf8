import { describe, expect, it } from 'vitest';
import { leatherWordsAgree } from '../../../src/check/leather-words-agree';
import { factsSaying, said } from './sample';

describe('leather-words-agree', () => {
  it.each([
    [
      'Full-grain leather outside. Vegan leather.',
      'doubt: The listing says “Full-grain leather” and also “Vegan leather”.',
    ],
    ['Cuir véritable … simili cuir', 'doubt: The listing says “Cuir véritable” and also “simili cuir”.'],
    ['Echtleder, innen Kunstleder', 'doubt: The listing says “Echtleder” and also “Kunstleder”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(leatherWordsAgree, factsSaying(words))).toEqual([statement]);
  });
  it.each(['Real leather all over', 'Kunstleder', 'Bag with pultruded frame and lambskin'])(
    'is silent on %j',
    (words) => {
      expect(said(leatherWordsAgree, factsSaying(words))).toEqual(['silent']);
    },
  );
});
