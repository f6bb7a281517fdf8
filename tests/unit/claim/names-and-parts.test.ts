import { describe, expect, it } from 'vitest';
import { findClaims, possibleMakerName } from '../../../src/claim';
import { claimsOf, listingOf } from './listing-of';

describe('who made the piece', () => {
  it('is not stated by a question', () => {
    expect(claimsOf('Ondrasse? No idea.', 'en')).toEqual([]);
    expect(claimsOf('It is an Ondrasse.', 'en')).toEqual(['maker Ondrasse']);
  });
  it('is hedged once, with an article between the hedge and the name', () => {
    expect(claimsOf('In the style of the Ondrasse.', 'en')).toEqual(['hedged-authorship']);
  });
  it.each([
    ['Velmont and Rook satchel', 'Velmont and Rook'],
    ['Sac Brandt et Fils', 'Brandt et Fils'],
    ['Handbag Velmont and purse', 'Velmont'],
    ['Tasche Velmont und Tasche', 'Velmont'],
  ])('is a name of two words with "and" between them: %s', (title, name) => {
    expect(possibleMakerName(listingOf(title, 'Of leather.'))).toBe(name);
  });
});

describe('a maker that is called like a material', () => {
  const maker = [{ value: 'Velluto', origin: 'visible' as const, where: 'dd', confidence: 0.9 }];
  const materials = (text: string) =>
    findClaims(listingOf('Borsa Velluto', text, 'it', { maker }), []).flatMap((claim) =>
      claim.kind === 'material' ? [`${claim.part} = ${claim.material}`] : [],
    );
  it('says nothing of what the piece is made of', () => {
    expect(materials('Borsa Velluto degli anni 90.')).toEqual([]);
    expect(materials('Borsa in velluto.')).toEqual(['body = velvet']);
  });
});

describe('a part by itself', () => {
  it('takes what stands behind its comma', () => {
    expect(claimsOf('Lining, red suede. Handles, brown leather.', 'en')).toEqual([
      'lining = red suede',
      'handle = brown leather',
    ]);
  });
  it('in a bracket behind it, what was done to it', () => {
    expect(claimsOf('Correa no original (sustituida en 2011).', 'es')).toEqual(['replaced strap']);
  });
});
