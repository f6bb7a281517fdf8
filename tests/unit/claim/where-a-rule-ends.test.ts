import { describe, expect, it } from 'vitest';
import { findClaims, likelyMakerName, possibleMakerName } from '../../../src/claim';
import { dateClaims } from '../../../src/claim/made';
import { passage, passagesOf } from '../../../src/claim/passage';
import { runsOf } from '../../../src/claim/runs';
import type { Listing } from '../../../src/listing/types';
import { claimsBeginning, claimsOf, listingOf, ondrasse, shortClaim } from './listing-of';

/* Where a rule holds for the last time, and where it holds no more. */

const kinds = (short: string, text: string, language: string | null = null, title = '') =>
  claimsOf(text, language, title).filter((claim) => claim.startsWith(short));

describe('how much of a text is read', () => {
  it('two hundred thousand characters, and not one more', () => {
    const text = 'bag '.repeat(50_000);
    for (const more of ['', 'x']) expect(passage('description', text + more, null, '').text).toBe(text);
    expect(passage('description', text.slice(1), null, '').text).toBe(text.slice(1));
  });

  it('of a title three hundred characters are what names the piece', () => {
    const title = 'y'.repeat(299);
    const named = (name: string) => passagesOf(listingOf(name, 'A bag.')).map((from) => from.title);
    expect(named(`${title}zx`)).toEqual([`${title}z`, `${title}z`]);
    expect(named(title)).toEqual([title, title]);
  });
});

describe('years of a range', () => {
  it.each<[string, string[]]>([
    ['A bag made between 1990 and 2002.', ['made 1990-2002']],
    ['A bag made between 1990 and 2003.', []],
    ['A bag, 1990-2002.', ['made 1990-2002']],
    ['A bag, 1990-2003.', []],
    ['A bag, 1990-94.', ['made 1990-1994']],
  ])('%s', (text, made) => expect(kinds('made', text)).toEqual(made));
});

describe('a year by itself', () => {
  it('is of the piece, unless a date that is surely the piece’s does not go with it', () => {
    expect(kinds('made', 'Satchel 1991, brown.')).toEqual(['made 1991-1991']);
    expect(kinds('made', 'Satchel 1991, brown. It was made in 1991.')).toEqual(['made 1991-1991', 'made 1991-1991']);
    expect(kinds('made', 'Satchel 1991, brown. It was made in 1985.')).toEqual(['made 1985-1985']);
    expect(kinds('made', 'Satchel 1991, brown. I bought it in 1991.')).toEqual(['made 1991-1991']);
    expect(kinds('made', 'Satchel 1991, brown. I bought it in 1997.')).toEqual(['made 1991-1991']);
    expect(kinds('made', 'Satchel 1991, brown. I bought it in 1985.')).toEqual([]);
  });

  it('in another order as well', () => {
    expect(kinds('made', 'I bought it in 1985. Satchel 1991, brown.')).toEqual([]);
  });
});

describe('grades of a legend', () => {
  const grades = ['new', 'like new', 'very good', 'damaged'];
  const conditions = (text: string) => kinds('condition', text);
  it('four different ones in a row grade nothing, three are said', () => {
    expect(conditions(`Condition: ${grades.slice(0, 3).join(', ')}.`)).toHaveLength(3);
    expect(conditions(`Condition: ${grades.join(', ')}.`)).toEqual([]);
  });
  it('but for the one that is said of this piece', () => {
    expect(conditions(`${grades.join(', ')}. This one is damaged.`)).toEqual(['condition damaged']);
  });
});

it('neighbours go on with the one before them, or begin a run', () => {
  const near = (before: number, one: number) => one - before <= 2;
  expect(runsOf([1, 3, 6, 7, 9, 20], near)).toEqual([[1, 3], [6, 7, 9], [20]]);
  expect(runsOf([4], near)).toEqual([[4]]);
  expect(runsOf([], near)).toEqual([]);
});

describe('what the page has in its field for the maker', () => {
  const stated = (value: string) =>
    findClaims(
      listingOf('A bag', 'Brown.', 'en', { maker: [{ value, origin: 'json-ld', where: 'x', confidence: 0.9 }] }),
      [ondrasse],
    ).flatMap((claim) => (claim.kind === 'maker' ? [claim.maker] : []));
  it.each([
    ['Ondrasse', 'Ondrasse'],
    ['House of Ondrasse 1994', 'Ondrasse'],
    ['Ondrasse Bruxelles Ltd', 'Ondrasse'],
    ['Ondrasse, ondrasse bruxelles', 'Ondrasse'],
    ['Ondrasse bags by Tavistock', 'Ondrasse bags by Tavistock'],
    ['Tavistock', 'Tavistock'],
  ])('%s: %s', (value, maker) => expect(stated(value)).toEqual([maker]));
  it('nobody', () => expect(stated('unbranded')).toEqual([]));
});

describe('a name that no file knows', () => {
  const likely = (title: string, text = 'A bag.') => likelyMakerName(listingOf(title, text, null));
  it.each([
    ['黒のバッグ 藤村鞄店 レザー', '藤村鞄店'],
    ['レザー トート 山際製作所', '山際製作所'],
    ['Bag by Oriel Thackeray', 'Oriel Thackeray'],
    ['Brown leather satchel', null],
  ])('in a title: %s', (title, name) => expect(likely(title)).toBe(name));
  it('in a text, behind a word for a brand', () => {
    expect(likely('Brown bag', 'A bag of the brand Thornaby, of leather.')).toBe('Thornaby');
    expect(likely('Brown bag', 'A bag of leather.')).toBeNull();
  });
  it('whatever has the form of a name, where nothing says more', () => {
    const possible = (text: string) => possibleMakerName(listingOf('Brown bag', text, null));
    expect(possible('My old bag comes from a shop in town, Thornaby it was.')).toBe('Thornaby');
    expect(possible('My old bag comes from a shop in town.')).toBeNull();
  });
});

describe('codes in capitals', () => {
  it.each([
    ['DATE CODE KV 0915', ['code KV 0915']],
    ['DATE CODE KV 0915 INSIDE POCKET', ['code KV 0915']],
    ['DATE CODE KV 0915, ON THE TAB', ['code KV 0915']],
  ])('%s', (text, codes) => expect(kinds('code', text)).toEqual(codes));
});

describe('a lining that the question names', () => {
  it.each(['Is there a lining? Yes, suede.', 'Hat sie ein Futter? Ja, Wildleder.'])('%s', (text) => {
    expect(kinds('body', text)).toEqual([]);
  });
  it.each(['Is there a strap? Yes. Suede.', 'Suede.'])('and no other: %s', (text) => {
    expect(kinds('body', text)).toEqual(['body = suede']);
  });
});

describe('the piece by its price', () => {
  type Price = Listing['price'][number]['value'];
  const price = (value: Partial<Price>) => {
    const whole = {
      minor: 45_000,
      exponent: 2,
      currency: 'EUR',
      currencies: ['EUR'],
      kind: 'asking',
      ...value,
    } as Price;
    return { value: whole, origin: 'json-ld' as const, where: 'x', confidence: 0.9 };
  };
  const words = (...prices: ReturnType<typeof price>[]) =>
    findClaims(listingOf('', 'A bag.', null, { price: prices }), []).flatMap((claim) =>
      claim.kind === 'price' ? [claim.words] : [],
    );
  it.each<[Partial<Price>, string]>([
    [{}, '450.00 EUR'],
    [{ minor: 5 }, '0.05 EUR'],
    [{ minor: 123 }, '1.23 EUR'],
    [{ minor: 12_000, exponent: 0, currency: 'JPY' }, '12000 JPY'],
    [{ currency: null, currencies: ['CAD', 'USD'] }, '450.00 CAD/USD'],
  ])('%j without words of its own: %s', (value, said) => expect(words(price(value))).toEqual([said]));
  it('once for each kind, by the first', () => {
    expect(words(price({}), price({ minor: 1 }), price({ minor: 90_000, kind: 'was' }))).toEqual([
      '450.00 EUR',
      '900.00 EUR',
    ]);
  });
});

it('dates of several passages are claimed in their order', () => {
  const passages = ['I bought it in 2004, it was made in 1994.', 'Made in 1994.'].map((text) =>
    passage('description', text, 'en', ''),
  );
  expect(dateClaims(passages, '2026-11-25', []).map((draft) => shortClaim({ id: '', ...draft } as never))).toEqual([
    'bought 2004-2004',
    'made 1994-1994',
    'made 1994-1994',
  ]);
  expect(claimsBeginning('made', 'Made in 1994.')).toEqual(['made 1994-1994']);
});
