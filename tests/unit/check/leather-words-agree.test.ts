import { describe, expect, it } from 'vitest';
import { leatherWordsAgree } from '../../../src/check/leather-words-agree';
import { facts, said, stated, withPhotos } from './sample';

describe('leather-words-agree', () => {
  const text = (words: string) => facts({ listing: withPhotos(1, { description: stated(words), text: words }) });
  it.each([
    [
      'Full-grain leather outside. Vegan leather.',
      'doubt: The listing says “Full-grain leather” and also “Vegan leather”.',
    ],
    ['Cuir véritable … simili cuir', 'doubt: The listing says “Cuir véritable” and also “simili cuir”.'],
    ['Echtleder, innen Kunstleder', 'doubt: The listing says “Echtleder” and also “Kunstleder”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(leatherWordsAgree, text(words))).toEqual([statement]);
  });
  it.each(['Real leather all over', 'Kunstleder', 'Bag with pultruded frame and lambskin'])(
    'is silent on %j',
    (words) => {
      expect(said(leatherWordsAgree, text(words))).toEqual(['silent']);
    },
  );
});
