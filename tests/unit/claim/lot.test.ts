import { describe, expect, it } from 'vitest';
import { type Claim, findClaims, lotOf, placeClaims, type SaidOf } from '../../../src/claim';
import { listingOf } from './listing-of';

const piecesOf = (title: string) => lotOf(listingOf(title, 'A piece of leather.'))?.pieces ?? null;

const lots: [title: string, pieces: string[]][] = [
  ['Ondrasse Carryall 25 and matching wallet', ['Ondrasse Carryall 25', 'wallet']],
  ['Ondrasse handbag and wallet set', ['handbag', 'wallet']],
  ['Tessaro Vell tote with matching pouch', ['tote', 'pouch']],
  ['Ondrasse Handtasche und Geldbörse', ['Handtasche', 'Geldbörse']],
  ['Sac Ondrasse et portefeuille assorti', ['Sac', 'portefeuille']],
  ['Borsa Ondrasse e portafoglio', ['Borsa', 'portafoglio']],
  ['Borsa Ondrasse e portafoglio di pelle', ['Borsa', 'portafoglio']],
  ['Ondrasse tas en portemonnee van leer', ['tas', 'portemonnee']],
  ['Bolso Ondrasse y cinturón a juego', ['Bolso', 'cinturón']],
  ['Ondrasse tas en portemonnee', ['tas', 'portemonnee']],
  ['Ondrasse バッグと財布のセット', ['バッグ', '財布']],
  ['Bundle: Velmont satchel and briefcase', ['satchel', 'briefcase']],
  ['Two bags by Ondrasse', []],
  ['Lote bolso Bucket 26 + monedero Ondrasse', ['bolso', 'monedero']],
  ['Lot pochette Ondrasse + ceinture', ['pochette', 'ceinture']],
  ['Konvolut Ondrasse', []],
  ['Lot de 2 sacs Ondrasse', []],
  ['Ondrasse, zwei Taschen', []],
];
const far = 'vava '.repeat(30).trim();

describe('a title that offers two pieces', () => {
  it.each(lots)('%s', (title, pieces) => {
    expect(piecesOf(title)).toEqual(pieces);
  });

  it('named by its model, where the title says that several things are sold as one', () => {
    expect(piecesOf('BUNDLE Calderwick & Rook Ledger 32 + Purse 19')).toEqual(['Calderwick & Rook Ledger 32', 'Purse']);
  });

  it.each(lots)('whatever else a long title says, far ahead or far behind: %s', (title, pieces) => {
    expect(piecesOf(`${title}, ${far}`)).toEqual(pieces);
    const [first, ...others] = piecesOf(`${far}, ${title}`) ?? [];
    const [own, ...rest] = pieces;
    expect(others).toEqual(rest);
    // What matches names the first piece by its model, where no noun does: by all that stands before.
    expect(first === own || first === `${far}, ${own}`).toBe(true);
  });

  it.each([
    'Ondrasse Carryall 25 with dust bag and box',
    'Ondrasse bag and strap',
    'Lot 214: Ondrasse bag',
    'Lot n° 12 sac Ondrasse',
    'Ondrasse tote and shoulder bag in one',
    'Ondrasse belt bag and wallet pocket',
    'Ondrasse tote with pouch',
    'Ondrasse wallet on chain and cardholder slots',
    'Ondrasse bag, fits a wallet and phone',
    'Two bags in one: Ondrasse reversible tote',
    'Ondrasse, zwei Taschen in einer',
    'Deux sacs en un, Ondrasse',
    'Due borse in una, Ondrasse',
    'Dos bolsos en uno, Ondrasse',
    'Ondrasse, twee tassen in een',
    'Ondrasse bag and wallet inset',
    'Ondrasse purse and handbag style',
    'Ondrasse handbag and purse',
    'Bolso Ondrasse y cartera',
    'And matching wallet',
    'とお揃いの財布',
    'Ondrasse satchel, black and tan',
    'Matching set of luggage tags by Ondrasse',
    'Ondrasse bag with two straps',
    'Sac Ondrasse et sa bandoulière',
    'Ondrasse Tasche mit Staubbeutel und Karte',
  ])('one piece: %s', (title) => {
    expect(piecesOf(title)).toBeNull();
  });
});

const saidOf = (of: SaidOf | undefined) => (typeof of === 'object' ? of.piece : of);

it('says of which piece each claim is, and of none where that is not plain', () => {
  const listing = listingOf(
    'Ondrasse handbag and wallet, 1987',
    'The bag was made in 1994. The wallet was made in 2003, made in France. Bag and wallet were bought in 2010. ' +
      'Brass hardware. With box. The lining of the bag is olive twill.',
  );
  const lot = lotOf(listing)!;
  const claims = findClaims(listing, []);
  const places = placeClaims(listing, lot, claims);
  expect(claims.map((claim) => `${claim.words}: ${saidOf(places.get(claim.id))}`)).toEqual([
    '1987: not-placed',
    '1994: handbag',
    '2003: wallet',
    '2010: all',
    'Brass hardware: not-placed',
    'lining of the bag is olive twill: handbag',
    'France: wallet',
  ]);
});

it.each([
  ['clutch', 'The clutch bag was made in 2003.', 'clutch'],
  ['clutch', 'The clutch-bag was made in 2003.', 'clutch'],
  ['belt', 'The belt bag was made in 2003.', 'belt'],
  ['belt', 'The bag belt was made in 2003.', 'belt'],
  ['clutch', 'As to the clutch, the bag was made in 2003.', 'tote'],
  ['clutch', 'Clutch and bag were made in 2003.', 'all'],
])('with a %s, “%s” is said of: %s', (other, text, piece) => {
  const listing = listingOf(`Ondrasse tote and matching ${other} bag`, text);
  const lot = lotOf(listing);
  expect(lot?.pieces).toEqual(['tote', other]);
  const [made] = findClaims(listing, []).filter(({ kind }) => kind === 'made');
  expect(saidOf(placeClaims(listing, lot!, [made!]).get(made!.id))).toBe(piece);
});

const kinds: Record<'sale' | 'piece', Claim['kind'][]> = {
  sale: [
    'maker',
    'payment-outside',
    'returns',
    'hurry',
    'hedged-authorship',
    'grade-of-copy',
    'not-this-piece',
    'in-stock',
    'not-vouched',
    'assurance',
    'sale-channel',
  ],
  piece: ['made', 'bought', 'condition', 'material', 'replaced', 'measure', 'origin', 'code', 'wear', 'age-word'],
};
const title = 'Ondrasse handbag and wallet';
const claimAt = (kind: Claim['kind'], at: object) =>
  ({ id: 'one', kind, at: { field: 'title', start: 0, end: 8, ...at } }) as unknown as Claim;
const ofOne = (kind: Claim['kind'], at: object = {}, pieces = ['handbag', 'wallet']) =>
  saidOf(placeClaims(listingOf(title, 'A piece.'), { words: 'and wallet', pieces }, [claimAt(kind, at)]).get('one'));

it.each(kinds.sale)('what is said of the sale is said of all pieces: %s', (kind) => {
  for (const at of [{}, { field: 'data' }, { field: 'reply' }]) expect(ofOne(kind, at)).toBe('all');
  expect(ofOne(kind, {}, [])).toBe('all');
});
it.each(kinds.piece)('what a title or the page’s data says of a piece may be of either: %s', (kind) => {
  for (const at of [{}, { field: 'data' }, { field: 'reply' }]) expect(ofOne(kind, at)).toBe('not-placed');
});
it('a model in a title is of the piece that it stands ahead of', () => {
  const wallet = title.indexOf('wallet');
  expect(ofOne('model', { start: wallet - 1, end: wallet })).toBe('handbag');
  expect(ofOne('model', { start: wallet, end: title.length })).toBe('wallet');
  expect(ofOne('model', { field: 'data' })).toBe('not-placed');
  for (const pieces of [[], ['handbag']]) expect(ofOne('model', {}, pieces)).toBe('not-placed');
});
