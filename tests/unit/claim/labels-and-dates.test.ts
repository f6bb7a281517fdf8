import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { claimsOf, listingOf, ondrasse } from './listing-of';

const materials = (words: string, language = 'en') =>
  claimsOf(words, language).filter((claim) => claim.includes(' = '));
const dated = (text: string, language = 'en') =>
  findClaims(listingOf('Ondrasse Carryall 30', text, language), [ondrasse]).flatMap((claim) =>
    claim.kind === 'made' || claim.kind === 'bought' ? [`${claim.kind} ${claim.span.from?.slice(0, 4)}`] : [],
  );

describe('a field of the piece in brackets at the head of its line', () => {
  it.each<[string, string, string[]]>([
    ['[Lining] Suede', 'en', ['lining = suede']],
    ['[Strap] Calfskin', 'en', ['strap = calfskin']],
    ['[Futter] Wildleder', 'de', ['lining = suede']],
    ['[Doublure] Daim', 'fr', ['lining = suede']],
  ])('%s', (words, language, said) => expect(materials(words, language)).toEqual(said));
});

describe('metal and its tone that stand by themselves', () => {
  it.each<[string, string, number]>([
    ['Toile olive, métal argenté.', 'fr', 1],
    ['Olive twill, silver metal.', 'en', 1],
    ['Toile olive, métal.', 'fr', 0],
  ])('%s', (words, language, count) =>
    expect(materials(words, language).filter((claim) => claim.startsWith('hardware'))).toHaveLength(count),
  );
});

describe('a year beside a word for something else', () => {
  it.each([
    ['The house was founded in 1952.', 'en'],
    ['The zip was replaced in 2012.', 'en'],
    ['Reparatur 2012 beim Sattler.', 'de'],
    ['Estimée en 2018 par un expert.', 'fr'],
    ['Negozio aperto nel 1964.', 'it'],
    ['Tienda fundada en 1971.', 'es'],
    ['Winkel opgericht in 1983.', 'nl'],
    ['1952年創業のお店です。', 'ja'],
  ])('is of no making and no purchase: %s', (text, language) => expect(dated(text, language)).toEqual([]));

  it.each([
    ['Made in Belgium, 1994.', 'en', ['made 1994']],
    ['Made in 1994, zip replaced in 2012.', 'en', ['made 1994']],
    ['Hergestellt 1994, Reparatur 2012.', 'de', ['made 1994']],
    ['Fabriqué en 1994, réparé en 2012.', 'fr', ['made 1994']],
    ['Restored in 2012, made in 1994.', 'en', ['made 1994']],
  ])('leaves the making’s own year: %s', (text, language, said) => expect(dated(text, language)).toEqual(said));
});
