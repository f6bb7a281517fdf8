import { describe, expect, it } from 'vitest';
import { findClaims, lotOf } from '../../../src/claim';
import { parseMeasures } from '../../../src/text';
import { claimsBeginning, claimsOf, listingOf, shortClaim } from './listing-of';

const makers = (title: string, text: string, language: string | null = null) =>
  findClaims(listingOf(title, text, language), []).flatMap((one) => (one.kind === 'maker' ? [shortClaim(one)] : []));

describe('who made the piece, as a sentence says it', () => {
  it.each([
    ['Old satchel', 'Made by Tanfield of Ripon.', 'maker Tanfield'],
    ['Vieux cartable', 'Confectionné par Marsenac à Tours.', 'maker Marsenac'],
    ['Alte Tasche', 'Gefertigt von Lindmoser in Graz.', 'maker Lindmoser'],
    ['Vecchia borsa', 'Prodotta da Calisandro a Lucca.', 'maker Calisandro'],
    ['Bolso viejo', 'Fabricado por Zubialde en Bilbao.', 'maker Zubialde'],
    ['Oude tas', 'Vervaardigd door Hesselink in Deventer.', 'maker Hesselink'],
    ['ミズカネ鞄 トートバッグ', '黒の牛革です。', 'maker ミズカネ鞄'],
  ])('%s: %s', (title, text, maker) => expect(makers(title, text)).toEqual([maker]));
  it.each([
    ['Old satchel', 'The handle was made by Tanfield of Ripon.'],
    ['Old satchel', 'Made by Hand.'],
    ['Old satchel', 'Made by Aunt Maud.'],
    ['ショルダー鞄 黒', '黒の牛革です。'],
    ['ビジネス鞄 トートバッグ', '黒の牛革です。'],
  ])('names nobody: %s: %s', (title, text) => expect(makers(title, text)).toEqual([]));
});

describe('numbers that are no sides', () => {
  it('a code’s own letter is not that of a side', () =>
    expect(parseMeasures('Stamped 05N44 R20. 31x22x9 cm.').map(({ measure }) => measure.mm)).toEqual([310, 220, 90]));
  it('a letter of a side is', () =>
    expect(parseMeasures('L30 H21 P17 cm', 'fr').map(({ measure }) => measure.mm)).toEqual([300, 210, 170]));
  it('a word that ends as “about” does lets no handle reach over a full stop', () =>
    expect(claimsBeginning('unknown', 'El asa está reseca. 33 x 24 x 11 cm.', 'es')).toHaveLength(3));
});

describe('shades in one word', () => {
  it.each([
    ['Kalbsleder in Dunkelgrau.', 'body = grey calfskin'],
    ['Kalfsleer in lichtblauw.', 'body = blue calfskin'],
  ])('%s', (text, claim) => expect(claimsOf(text, null)).toContain(claim));
});

it.each(['Mijn zus gebruikte hem als schooltas.', 'Oma gebruikte deze op zondag.'])(
  'what somebody used it for grades nothing: %s',
  (text) => expect(claimsBeginning('condition', text, 'nl')).toEqual([]),
);

describe('what else is new', () => {
  it.each([
    'The gloves are new.',
    'I also sell shoes, they are unworn.',
    'Wir haben auch Schuhe, die sind neu.',
    'Das Leder der Stiefel ist neu.',
    'Le cuir des bottes est neuf.',
    'Le scarpe sono nuove.',
    'Los zapatos son nuevos.',
    'De laarzen zijn nieuw.',
  ])('is not the piece: %s', (text) => expect(claimsBeginning('condition', text)).toEqual([]));
  it.each(['The leather bag is new.', 'Die Ledertasche ist neu.', 'El bolso de piel es nuevo.'])(
    'unless it is: %s',
    (text) => expect(claimsBeginning('condition', text)).toEqual(['condition new']),
  );
});

it.each([
  ['La cremallera interior se cambió en 2018.', 'replaced zip'],
  ['La zip interna è stata sostituita nel 2018.', 'replaced zip'],
  ['El forro interior se cambió en 2018.', 'replaced lining'],
])('an inner part is that part: %s', (text, claim) => expect(claimsBeginning('replaced', text)).toEqual([claim]));

it.each([
  ['Lona plastificada con asas de piel.', 'es'],
  ['Tela rivestita con manici in pelle.', 'it'],
  ['Beschichtete Leinwand mit Henkeln aus Leder.', 'de'],
])('coated canvas with parts of leather: %s', (text, language) =>
  expect(claimsOf(text, language)).toContain('body = canvas'),
);

it('a maker’s name ends with its sentence', () =>
  expect(makers('Alte Tasche', 'Marke Lindmoser. Er hat sie geliebt.')).toEqual(['maker Lindmoser']));

describe('two pieces, told in the text', () => {
  const lot = (text: string) => lotOf(listingOf('Bags', text, null))?.words ?? null;
  it.each([
    ['I am selling two bags, one by Ondrasse and one unbranded.', 'two bags'],
    ['Je vends deux sacs, un grand et un petit.', 'deux sacs'],
    ['Ich verkaufe zwei Taschen.', 'zwei Taschen'],
    ['Vendo due borse insieme.', 'due borse'],
    ['Vendo dos bolsos.', 'dos bolsos'],
    ['Ik verkoop twee tassen.', 'twee tassen'],
    ['バッグ2点を出品します。', 'バッグ2点'],
  ])('%s', (text, words) => expect(lot(text)).toBe(words));
  it.each([
    'I own two bags of this kind and am selling one.',
    'Ich habe zwei Taschen und verkaufe eine.',
    'Selling two bags in one.',
  ])('is one: %s', (text) => expect(lot(text)).toBeNull());
});
