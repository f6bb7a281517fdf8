import { describe, expect, it } from 'vitest';
import { claimsOf } from './listing-of';

const materials = (words: string, language: string | null = 'en') =>
  claimsOf(words, language).filter((claim) => claim.includes(' = '));

describe('a material between two parts', () => {
  it.each<[string, string, string[]]>([
    // Right behind the material in English, right ahead of it in Romance languages, or where a link leads to it.
    ['en', 'Strap brown leather lining', ['lining = brown leather']],
    ['en', 'The lining is suede handle worn', ['lining = suede']],
    ['en', 'The strap: calfskin lining', ['strap = calfskin']],
    ['de', 'Riemen braunes Leder Futter', ['lining = brown leather']],
    ['fr', 'Bandoulière en cuir doublure en daim', ['strap = leather', 'lining = suede']],
    ['it', 'Fodera in camoscio tracolla lunga', ['lining = suede']],
    ['es', 'Forro de ante correa larga', ['lining = suede']],
  ])('%s: %s', (language, words, said) => expect(materials(words, language)).toEqual(said));
});

describe('a part that stands by itself ahead of a comma', () => {
  it.each<[string, string[]]>([
    ['Lining, red suede', ['lining = red suede']],
    ['Lining , red suede', ['lining = red suede']],
    ['The lining, red suede', ['lining = red suede']],
    ['Lining torn, red suede', []],
    ['Some lining, red suede', []],
  ])('“%s”', (words, said) => expect(materials(words).filter((claim) => claim.startsWith('lining'))).toEqual(said));
});

it.each<[string, string[]]>([
  ['Ondrasse leather bag', ['body = leather']],
  ['Ondrasse brown leather bag', ['body = brown leather']],
  // Fittings are of metal, and bags are not; a part that the title names may be what its material is of.
  ...['brass', 'bronze', 'nickel', 'palladium', 'steel', 'plastic'].flatMap((metal): [string, string[]][] => [
    [`Ondrasse ${metal} bag`, []],
    [`Ondrasse brown ${metal} bag`, []],
  ]),
  ['Ondrasse leather bag with zip', []],
])('a title says of the piece “%s”', (title, said) =>
  expect(claimsOf('', 'en', title).filter((claim) => claim.startsWith('body'))).toEqual(said),
);

describe('a material by itself', () => {
  it.each<[string, string[]]>([
    ['The lining is stained. Canvas.', ['body = canvas']],
    ['Is the lining new? Canvas.', []],
    ['Lining? Canvas.', ['lining = canvas']],
    ["My sister's has pigskin, this one canvas.", []],
  ])('“%s”', (words, said) => expect(materials(words)).toEqual(said));
});

describe('brass that opens an item of its own', () => {
  const words = ['plain', 'and', 'bright', 'as', 'ever', 'today'];
  it.each([0, 1, 5])('is of the fittings where no more than five words stand behind it: %i', (count) => {
    expect(materials(`Olive twill, brass ${words.slice(0, count).join(' ')}.`)).toEqual(['hardware = brass']);
  });
  it('is left open where more do', () => {
    expect(materials(`Olive twill, brass ${words.join(' ')}.`)).toEqual([]);
  });
});

it.each<[string, string[]]>([
  ['With a striped cotton lining and nickel fittings.', ['lining = cotton', 'hardware = nickel']],
  ['A bag of dark green deerskin.', ['body = green deerskin']],
  ['Tan cowhide, two brass locks.', ['body = tan leather', 'lock = brass']],
  [
    'It is a satchel, made in England, in conker brown leather, with a brass lock.',
    ['body = brown leather', 'lock = brass'],
  ],
  ['It comes in a box, in conker brown paper.', []],
])('a word for a material may end with its part: %s', (words, said) => expect(materials(words)).toEqual(said));
