import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { claimsBeginning as heard, listingOf } from './listing-of';

describe('a date that is no date of making', () => {
  it.each([
    'Est. 1962. A leather bag.',
    'Made on 3 March.',
    'This model was in the catalogue from 1990 to 1995.',
    'The model ran from 1990 until 1995.',
  ])('“%s”', (words) => expect(heard('made', words)).toEqual([]));
});

describe('what was replaced', () => {
  it.each<[string, string[]]>([
    ['The strap broke, I replaced it in 2018.', ['replaced strap']],
    ['Strap broke, I replaced it in 2018.', ['replaced strap']],
    ['The dust bag tore, I replaced it in 2018.', []],
    ['The strap is long. I replaced it in 2018.', []],
    ['La cremallera aún no se ha cambiado.', []],
    ['La cremallera se ha cambiado.', ['replaced zip']],
    // The month of a date is no word of what may be done, whichever of two dates it is in.
    ['In May 2014 the zip was replaced.', ['replaced zip']],
    ['In 2014 and May 2016 the zip was replaced.', ['replaced zip']],
    ['The zip may be replaced.', []],
    ['In May 2014 the zip may be replaced.', []],
  ])('“%s”', (words, said) =>
    expect(heard('replaced', words).map((claim) => claim.split(' ').slice(0, 2).join(' '))).toEqual(said),
  );
});

it('in capitals a group of two letters ends a code, but for its first', () => {
  const claims = findClaims(listingOf('Leather bag by Holloway', 'CODICE KV 0915 SU PELLE', 'it'), []);
  expect(claims.flatMap((claim) => (claim.kind === 'code' ? [claim.code] : []))).toEqual(['KV 0915']);
});

describe('a paper of one of two events in a sentence', () => {
  const papers = (words: string) =>
    findClaims(listingOf('', words), []).flatMap((claim) =>
      claim.kind === 'replaced' ? [claim.invoice === true] : [],
    );
  it.each<[boolean, string]>([
    [false, 'The zip was replaced in 2016, I bought it in 1994 with receipt.'],
    [true, 'The zip was replaced in 2016 with receipt, I bought it in 1994.'],
    [false, 'I bought it in 1994 with receipt, the zip was replaced in 2016.'],
    [true, 'I bought it in 1994, the zip was replaced in 2016 with receipt.'],
    [false, 'The zip was replaced in 2016. I bought it with receipt.'],
  ])('%s for the repair: %s', (paper, words) => expect(papers(words)).toEqual([paper]));
});
