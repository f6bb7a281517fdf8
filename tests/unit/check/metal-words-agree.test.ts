import { describe, expect, it } from 'vitest';
import { metalWordsAgree } from '../../../src/check/metal-words-agree';
import { factsSaying, said } from './sample';

describe('metal-words-agree', () => {
  it.each([
    [
      'Solid gold buckle. The buckle is gold plated.',
      'doubt: The listing says “Solid gold” and also “gold plated” of the buckle.',
    ],
    [
      'Solid brass hardware, zinc alloy hardware',
      'doubt: The listing says “Solid brass” and also “zinc alloy” of the hardware.',
    ],
    [
      'fibbia in oro massiccio, fibbia placcata oro',
      'doubt: The listing says “oro massiccio” and also “placcata oro” of the fibbia.',
    ],
  ])('speaks on %j', (words, statement) => {
    expect(said(metalWordsAgree, factsSaying(words))).toEqual([statement]);
  });
  it.each([
    'Solid brass buckles',
    'Gold plated buckles',
    'Brass',
    // Solid brass is plated with gold, and is golden in tone.
    'Solid brass buckles, gold plated',
    'Solid brass hardware in gold-tone',
    'ottone massiccio, placcato oro',
    // Two parts may be of two metals.
    'Solid brass buckles, zinc alloy zip',
    'Solid gold buckle, not gold plated',
  ])('is silent on %j', (words) => {
    expect(said(metalWordsAgree, factsSaying(words))).toEqual(['silent']);
  });
});
