import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { builtInMakers } from '../../../src/maker';
import { listingOf, shortClaim } from './listing-of';

const told = (kind: string, description: string, title = 'Tessaro Vell Sporta 40') =>
  findClaims(listingOf(title, description, null), builtInMakers).flatMap((one) =>
    one.kind === kind ? [one.kind === 'code' ? one.code : shortClaim(one)] : [],
  );

describe('what strangers write', () => {
  it.each([
    ['Inside label: 29 B 02 V 70, made in Vietnam.', '29 B 02 V 70'],
    ['Code: T5 03291 W 40 H 31 D 16 cm', 'T5 03291'],
    ['CODICE P4-366/00 DENTRO LA TASCA', 'P4-366/00'],
  ])('a code is whole, and ends where something else begins: %s', (text, code) => {
    expect(told('code', text)).toEqual([code]);
  });

  it('a row of sides behind a word for a place is no code', () => {
    expect(told('code', 'Label inside: W 40 H 31 D 16')).toEqual([]);
  });

  it.each([
    'My other Sporta by the same maker (2019) stays here.',
    'Meine zweite derselben Marke (von 2019) gebe ich nicht her.',
    'J’en ai un de la même marque (de 2019), je le garde.',
    'Ne ho una della stessa marca (del 2019), non la vendo.',
    'Tengo otro de la misma casa (de 2019) que no lo vendo.',
    'Die van hetzelfde merk (uit 2019) blijft hier.',
  ])('a piece that stays with the seller has its own year: %s', (text) => {
    expect(told('made', text)).toEqual([]);
  });

  it('a part and the piece have a year each', () => {
    const text = 'The strap was replaced in 2012, I bought it in 1998.';
    expect(told('bought', text)).toEqual(['bought 1998-1998']);
  });

  it.each([
    ['You can send it back within 14 days, unused.', []],
    ['Unused. You can send it back within 14 days.', ['condition unused']],
    ['Jamais portée, donc comme neuve.', ['condition unused', 'condition as-new']],
    ['It is not so new any more.', ['condition used']],
  ] as [string, string[]][])('a condition is of the piece as it is: %s', (text, conditions) => {
    expect(told('condition', text)).toEqual(conditions);
  });

  it('names fields in brackets', () => {
    expect(told('material', '[Interior] Printed cotton\n[Hardware] Brass')).toEqual([
      'lining = printed cotton',
      'hardware = brass',
    ]);
  });

  it.each([
    ['Bank transfer on collection.', 0],
    ['Bank transfer or in person.', 1],
    ['Überweisung bei Abholung.', 0],
  ])('who pays at the door has seen the piece: %s', (text, claims) => {
    expect(told('payment-outside', text)).toHaveLength(claims);
  });

  it('years between articles are one span', () => {
    expect(told('made', 'Realizzata tra il 1990 e il 1994.')).toEqual(['made 1990-1994']);
  });
});
