import { describe, expect, it } from 'vitest';
import { freshAgainstAge } from '../../../src/check/fresh-against-age';
import { facts, kv0915, madeIn, said, stated, withPhotos } from './sample';

describe('fresh-against-age', () => {
  const text = (words: string) => withPhotos(1, { description: stated(words) });
  it('doubts pale handles after thirty years', () => {
    expect(said(freshAgainstAge, facts({ listing: text('Pale handles, used daily'), decodings: [kv0915] }))).toEqual([
      'doubt: The listing says “Pale handles”, but the stamp in photo 1 reads KV0915 (January 1995): about 31 years of age.',
    ]);
  });
  it('is silent when the listing gives the reason, or the piece is young', () => {
    expect(
      said(freshAgainstAge, facts({ listing: text('Pale handles, stored in its bag'), decodings: [kv0915] })),
    ).toEqual(['silent']);
    expect(said(freshAgainstAge, facts({ listing: text('Pale handles'), claims: [madeIn(2022)] }))).toEqual(['silent']);
  });
  it('cannot tell without a date and does not apply without the words', () => {
    expect(said(freshAgainstAge, facts({ listing: text('Pale handles') }))).toEqual([
      'cannot-tell: neither a code nor the listing gives a date',
    ]);
    expect(said(freshAgainstAge, facts({ listing: text('Dark handles') }))[0]).toMatch(/^not-applicable/);
  });
});
