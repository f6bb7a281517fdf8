import { describe, expect, it } from 'vitest';
import { claimsOf, type Told, told } from './listing-of';

/** Years of the last century that are said without it, and numbers that are none. */
const rows: [text: string, language: string, claims: string[]][] = [
  ['Presa nel 98 a Firenze.', 'it', ['bought 1998-1998']],
  ['Bought in Brussels in late 99, so yes.', 'en', ['bought 1999-1999']],
  ['Achetée fin 99 à Lille.', 'fr', ['bought 1999-1999']],
  ['Lo compré en el 98 en Amberes.', 'es', ['bought 1998-1998']],
  ['Gekregen van mijn tante in 95, nooit gebruikt.', 'nl', ['bought 1995-1995', 'condition unused']],
  ['Gekauft Ende 98 in Gent.', 'de', ['bought 1998-1998']],
  ['98年頃にアントワープで購入。', 'ja', ['bought 1998-1998']],
  ['60年に渡って愛されるデザイン。購入。', 'ja', []],
  ['昭和60年に購入。', 'ja', ['bought 1985-1985']],
  ['Bought in 90 minutes of queueing.', 'en', []],
  ['Paid around 80, bought used.', 'en', ['condition used']],
  ['Gekauft um 80, neu 95 Euro.', 'de', []],
];

describe('a year without its century', () => {
  it.each(rows)('%s', (text, language, claims) => expect(claimsOf(text, language)).toEqual(claims));
});

describe('two digits', () => {
  it.each<Told>([
    ['Bought in 98.', ['bought 1998-1998']],
    ['Bought in 98 at the shop.', ['bought 1998-1998']],
    ['Bought in 98 pieces.', []],
    ['Bought in 04.', []],
    ['Presa nel 98.', ['bought 1998-1998']],
    ['98年頃に購入。', ['bought 1998-1998']],
    ['Tasche, Baujahr 98.', ['made 1998-1998']],
    ['Delivered in 72 hours.', []],
  ])('%s', (text, claims, title) => expect(told(['made', 'bought'], text, title)).toEqual(claims));
});
