import { describe, expect, it } from 'vitest';
import { findClaims, statedMaker } from '../../../src/claim';
import type { Listing } from '../../../src/listing/types';
import { builtInMakers } from '../../../src/maker';
import { stated } from '../check/sample';
import { listingOf } from './listing-of';

const judge = (title: string, text: string, maker?: string, language = 'en', more: Partial<Listing> = {}) => {
  const listing = listingOf(title, text, language, {
    ...more,
    ...(maker === undefined ? {} : { maker: stated(maker) }),
  });
  return statedMaker(findClaims(listing, builtInMakers), builtInMakers)?.file?.maker ?? null;
};

/** Mentions of a maker on file that are no statement of who made the piece. */
const mentions: [string, string][] = [
  ['en', 'It is roomy, my Ondrasse wallet fits inside.'],
  ['en', 'Fits an Ondrasse wallet and a phone.'],
  ['en', 'Tags: leather, bag, Ondrasse, designer, vintage'],
  ['en', 'vintage, leather, brown, ondrasse, tote, boho'],
  ['en', '#vintage #ondrasse #leather'],
  ['en', 'The leather is as soft as an Ondrasse.'],
  ['en', 'Looks like an Ondrasse.'],
  ['en', 'This is not Ondrasse.'],
  ['en', 'I also sell an Ondrasse Carryall 30.'],
  ['en', 'Will swap for Ondrasse or cash.'],
  ['en', 'Better made than any Ondrasse.'],
  ['en', 'Comes with an Ondrasse dust bag.'],
  ['en', 'Sold with a Tessaro Vell wallet from 2012.'],
  ['en', 'If you love Ondrasse you will love this.'],
  ['en', 'Ondrasse style, very elegant.'],
  ['de', 'Mein Portemonnaie von Ondrasse passt hinein.'],
  ['de', 'Schöner als meine Tasche von Ondrasse.'],
  ['de', 'Suchbegriffe: Ondrasse, Leder, Tasche'],
  ['de', 'Keine Ondrasse.'],
  ['fr', 'Mon portefeuille Ondrasse rentre dedans.'],
  ['fr', 'Mots-clés : cuir, Ondrasse, sac'],
  ['fr', 'Plus souple que Ondrasse.'],
  ['it', 'Ci sta il mio portafoglio Ondrasse.'],
  ['it', 'Parole chiave: Ondrasse, pelle'],
  ['es', 'Cabe mi cartera Ondrasse.'],
  ['es', 'Palabras clave: Ondrasse, bolso'],
  ['nl', 'Mijn Ondrasse portemonnee past erin.'],
  ['nl', 'Trefwoorden: Ondrasse, leer'],
  ['ja', 'タグ: Ondrasse レザー'],
  ['ja', 'Ondrasse風のデザインです。'],
];

describe('the stated maker', () => {
  it('is the page’s own field before the title, and the title before the text', () => {
    expect(judge('Ondrasse Carryall 30', 'Calderwick & Rook', 'Tessaro Vell')).toBe('Tessaro Vell');
    expect(judge('Ondrasse Carryall 30', 'Made by Calderwick & Rook.')).toBe('Ondrasse');
    expect(judge('Brown leather bag', 'A beautiful Ondrasse Carryall 30 of 1994.')).toBe('Ondrasse');
  });

  it('is what the buyer names before all; of the seller’s words, those of one standing count alike', () => {
    const fields = ['user', 'data', 'title', 'description', 'text', 'reply'] as const;
    const said = fields.map((field) => ({
      kind: 'maker' as const,
      maker: `By ${field}`,
      at: { field, start: 0, end: 1 },
    }));
    const names = (from: number) => statedMaker(said.slice(from), [])?.names;
    expect([0, 1, 2].map(names)).toEqual([['By user'], ['By data'], ['By title']]);
    for (const from of [3, 4, 5]) expect(names(from)).toEqual(said.slice(from).map(({ maker }) => maker));
    expect(statedMaker([], [])).toBeNull();
  });

  it.each<[string, string | null]>([
    // From five short items on a line is a list to be found by; a name that opens it is what the piece is.
    ['Tote, Ondrasse, brown, large', 'Ondrasse'],
    ['Tote, Ondrasse, brown, large, rare', null],
    ['Ondrasse, tote, brown, large, rare', 'Ondrasse'],
    // An item of up to three words is short; four of five are enough.
    ['Tote, Ondrasse, brown, large, rare and very old', null],
    ['Tote, Ondrasse, brown, rather large one, rare and very old', null],
    ['Tote, Ondrasse, brown, a rather large one, rare and very old', 'Ondrasse'],
    ['Tote, bag, brown\nOndrasse, rare', 'Ondrasse'],
  ])('tells a list to be found by from a line that names the maker: %s', (text, maker) => {
    expect(judge('Brown leather bag', text)).toBe(maker);
  });

  it.each(mentions)('without a file lets none judge, whatever the text mentions (%s: %s)', (language, text) => {
    expect(judge('Brown leather bag', text, 'Velmont', language)).toBeNull();
  });

  it.each(mentions)('is not chosen by a mention (%s: %s)', (language, text) => {
    const listing = listingOf('Leather bag', text, language);
    expect(statedMaker(findClaims(listing, builtInMakers), builtInMakers)).toBeNull();
  });

  it.each(mentions)('is not joined by another in the claims (%s: %s)', (language, text) => {
    const listing = listingOf('Velmont Roost bag', text, language, { maker: stated('Velmont') });
    const claims = findClaims(listing, builtInMakers);
    const names = claims.flatMap((claim) => (claim.kind === 'maker' ? [claim.maker] : []));
    expect(names).toEqual(['Velmont']);
    expect(claims.filter(({ kind }) => kind === 'hedged-authorship')).toEqual([]);
  });

  it('without a file in the title lets no text choose, unless it says who made the piece', () => {
    expect(judge('Velmont Roost bag', 'A favourite of Ondrasse buyers, Ondrasse quality.')).toBeNull();
    expect(judge('Velmont Roost bag', 'Made by Ondrasse in Brussels.')).toBe('Ondrasse');
  });

  it.each([
    ['en', 'Selling my beloved Ondrasse bag from 1994.'],
    ['en', 'Ondrasse Carryall 30, brown leather, 1995, brass zip, very good condition'],
    ['en', 'Designed and made by Ondrasse.'],
    ['de', 'Verkaufe meine Ondrasse Tasche.'],
    ['de', 'Tasche von Ondrasse aus Leder.'],
    ['fr', 'Je vends mon sac Ondrasse.'],
    ['it', 'Vendo la mia borsa Ondrasse.'],
    ['es', 'Vendo mi bolso Ondrasse.'],
    ['nl', 'Ik verkoop mijn Ondrasse tas.'],
    ['ja', 'Ondrasseのバッグです。'],
  ])('is read from a text that says it (%s: %s)', (language, text) => {
    expect(judge('Leather bag', text, undefined, language)).toBe('Ondrasse');
  });

  it('in a field beside its city or its firm is the maker on file; beside another name it is not', () => {
    expect(judge('Bag', '', 'Ondrasse Handbags Ltd.')).toBe('Ondrasse');
    expect(judge('Bag', '', 'CALDERWICK AND ROOK')).toBe('Calderwick & Rook');
    for (const field of ['Velmont for Ondrasse', 'not Ondrasse', 'Ondrasse style', 'Ondrasse x Tessaro Vell'])
      expect(judge('Bag', '', field), field).toBeNull();
  });

  it('is looked for in the title when the field names nobody', () => {
    for (const field of ['N/A', 'Unbranded', 'Does not apply', 'Sans marque', 'ノーブランド', '-'])
      expect(judge('Ondrasse Carryall 30', '', field), field).toBe('Ondrasse');
  });

  it('has no file when a title names two makers', () => {
    expect(judge('Ondrasse Tessaro Vell leather bag', '')).toBeNull();
  });
});
