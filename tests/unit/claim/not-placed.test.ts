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

describe('codes and sizes of what comes along', () => {
  it.each([
    ['The box has a label with KV0915 on it.', 'en', ['code: The box has a label with KV0915 on it']],
    ['Die Schachtel ist 40 x 35 cm groß.', 'de', ['measure: Die Schachtel ist 40 x 35 cm groß']],
    ['Dust bag measures 40 x 35 cm.', 'en', ['measure: Dust bag measures 40 x 35 cm']],
  ])('are said, and not placed: %s', (sentence, language, open) => expect(openOf(sentence, language)).toEqual(open));

  it('are said of each passage by itself', () => {
    const listing = listingOf('', 'The box is 40 x 35 cm.');
    const open = findClaims(listing, [ondrasse], ['The box is 41 x 36 cm.']).filter(
      ({ kind }) => kind === 'not-placed',
    );
    expect(open.map(({ at, words }) => `${at.field}: ${words}`)).toEqual([
      'description: The box is 40 x 35 cm',
      'reply: The box is 41 x 36 cm',
    ]);
  });

  it.each([
    ['Comes with dust bag. Code KV0915.', 'en'],
    ['En la etiqueta pone KV0915.', 'es'],
    ['The strap has KV0915 on its tab.', 'en'],
  ])('a code on the piece is the piece’s: %s', (sentence, language) => {
    expect(findClaims(listingOf('', sentence, language), [ondrasse]).map(({ kind }) => kind)).toContain('code');
    expect(openOf(sentence, language)).toEqual([]);
  });

  it('of what the page’s reader took from the same words nothing is the piece’s', () => {
    const value = { dimension: 'unknown' as const, mm: 400, precisionMm: 5, unit: 'cm' as const, words: '40' };
    const measures = [{ value, origin: 'visible' as const, where: 'description', confidence: 0.6 }];
    const listing = listingOf('', 'The dust bag is 40 x 35 cm.', 'en', { measures });
    expect(findClaims(listing, [ondrasse]).filter(({ kind }) => kind === 'measure')).toEqual([]);
  });
});
