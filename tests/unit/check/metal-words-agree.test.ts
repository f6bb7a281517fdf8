import { describe, expect, it } from 'vitest';
import { metalWordsAgree } from '../../../src/check/metal-words-agree';
import { facts, said, stated, withPhotos } from './sample';

describe('metal-words-agree', () => {
  const text = (words: string) => facts({ listing: withPhotos(1, { description: stated(words), text: words }) });
  it.each([
    ['Solid brass buckles, gold-tone zip', 'doubt: The listing says “Solid brass” and also “gold-tone”.'],
    ['ottone massiccio, placcato oro', 'doubt: The listing says “ottone massiccio” and also “placcato oro”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(metalWordsAgree, text(words))).toEqual([statement]);
  });
  it.each(['Solid brass buckles', 'Gold plated buckles', 'Brass'])('is silent on %j', (words) => {
    expect(said(metalWordsAgree, text(words))).toEqual(['silent']);
  });
});
