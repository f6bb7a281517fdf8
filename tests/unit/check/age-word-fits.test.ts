import { describe, expect, it } from 'vitest';
import { ageWordFits } from '../../../src/check/age-word-fits';
import { facts, kv0915, madeIn, said, stated, withPhotos } from './sample';

describe('age-word-fits', () => {
  const text = (words: string) => withPhotos(1, { description: stated(words) });
  it('doubts “vintage” on a piece of ten years', () => {
    expect(said(ageWordFits, facts({ listing: text('A lovely vintage bag'), claims: [madeIn(2016)] }))).toEqual([
      'doubt: The listing says “vintage”, which is at least 20 years old, but it is said to be of “made in 2016”.',
    ]);
  });
  it('is silent on “vintage” for a piece of thirty years', () => {
    expect(said(ageWordFits, facts({ listing: text('Vintage!'), decodings: [kv0915] }))).toEqual(['silent']);
  });
  it('cannot tell without a date and does not apply without the word', () => {
    expect(said(ageWordFits, facts({ listing: text('Vintage!') }))).toEqual([
      'cannot-tell: neither a code nor the listing gives a date',
    ]);
    expect(said(ageWordFits, facts({ listing: text('A bag') }))).toEqual([
      'not-applicable: the listing uses neither word',
    ]);
  });
});
