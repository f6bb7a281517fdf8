import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf, ondrasse } from './listing-of';

const openOf = (description: string, language = 'en') =>
  findClaims(listingOf('', description, language), [ondrasse]).flatMap((claim) =>
    claim.kind === 'not-placed' ? [`${claim.of}: ${claim.words}`] : [],
  );

describe('what is said of no known thing', () => {
  it('stands with the clause around it', () => {
    expect(openOf('A lovely thing. In the attic we found a note with 1994 on it.')).toEqual([
      'date: In the attic we found a note with 1994 on it',
    ]);
  });
  it('stands at its own place in the text', () => {
    const text = 'Lovely. In the attic we found a note with 1994 on it.';
    const [claim] = findClaims(listingOf('', text), [ondrasse]).filter(({ kind }) => kind === 'not-placed');
    expect(text.slice(claim?.at.start, claim?.at.end)).toBe(claim?.words);
  });
  it.each([
    'Made in 1994.',
    'Bought in 2010.',
    'Zip replaced in 2016.',
    'The dust bag is from 2019.',
    'Founded in 1952.',
  ])('holds nothing that is known to be of something: %s', (sentence) => expect(openOf(sentence)).toEqual([]));
});
