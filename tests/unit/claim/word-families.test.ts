import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { claimsOf, listingOf, shortClaim, type Told, told } from './listing-of';

const families =
  /^(?:not )?(?:grade-of-copy|not-this-piece|remade|not-vouched|packaging-only|assurance|hurry|wear|leather|leather-like|fresh-part|stored|vintage|antique|solid|gold|silver|brass|zinc)/;
const said = (words: string) => claimsOf(words, null).filter((claim) => families.test(claim));

describe('families of sellers’ words', () => {
  it.each<[string, string[]]>([
    ['Some scratches on the base.', ['wear']],
    ['No scratches, no stains.', ['not wear', 'not wear']],
    ['Aucune rayure, sans taches.', ['not wear', 'not wear']],
    ['Ohne Kratzer und Flecken', ['not wear', 'not wear']],
    ['Senza graffi.', ['not wear']],
    ['Sin manchas.', ['not wear']],
    ['Geen krassen.', ['not wear']],
    ['傷があります。', ['wear']],
    ['目立つ傷はありません。', []],
    // What is named so that it stays away.
    ['The film protects against scratches.', ['not wear']],
    ['Beware of replica bags', ['not grade-of-copy']],
    ['Vorsicht vor Kratzern', []],
    // A denial that says something by itself is not taken back by the one before it.
    ['No scratches no patina', ['not wear', 'fresh-part', 'not wear']],
    ['Today only must go today', ['hurry', 'hurry']],
    // Somebody else made it out of an older piece.
    ['Crossbody upcycled from a designer tote', ['remade']],
    ['This is not upcycled', ['not remade']],
    ['Pochette surcyclée', ['remade']],
    ['Gürteltasche, Upcycling aus alter Tasche', ['remade']],
    ['Ricavata da una borsa degli anni 80', ['remade']],
    ['Bolso transformado a partir de otro', ['remade']],
    ['Gemaakt van een oude tas', ['remade']],
    ['古い鞄の革をリメイクしたポーチ', ['remade']],
    ['Is it upcycled?', []],
    // The seller does not know.
    ["I don't know if it is authentic.", ['not-vouched']],
    ["Not sure if it's real, sold as is.", ['not-vouched']],
    ['Authenticity not guaranteed.', ['not-vouched']],
    ['I cannot guarantee authenticity.', ['not-vouched']],
    ['Ich weiß nicht, ob sie echt ist.', ['not-vouched']],
    ['Ohne Gewähr für Echtheit', ['not-vouched']],
    ['Je ne sais pas si c’est un vrai.', ['not-vouched']],
    ['Authenticité non garantie.', ['not-vouched']],
    ['Non so se è originale.', ['not-vouched']],
    ['No sé si es auténtico.', ['not-vouched']],
    ['Ik weet niet of het echt is.', ['not-vouched']],
    ['本物かわかりません', ['not-vouched']],
    ['真贋は不明です', ['not-vouched']],
    ['Authenticity guaranteed', ['assurance']],
    ['Not sure if it is real leather.', []],
    ['Je ne sais pas si c’est un vrai cuir.', []],
    // Only what it came in.
    ['Box only, no bag.', ['packaging-only']],
    ['Empty box and dust bag, bag not included', ['packaging-only', 'packaging-only']],
    ['Nur Staubbeutel', ['packaging-only']],
    ['Boîte vide', ['packaging-only']],
    ['Solo scatola', ['packaging-only']],
    ['Solo la caja', ['packaging-only']],
    ['Lege doos', ['packaging-only']],
    ['空箱', ['packaging-only']],
    ['Comes with box and dust bag', []],
    ['Not faux leather but real leather', ['not leather-like', 'leather']],
    ['本革ではありません、合皮です', ['not leather', 'leather-like']],
    ['Solid brass buckle, gold plated chain', ['solid brass of buckle', 'gold of anything']],
    ['Similar to a vintage satchel', []],
  ])('%s', (words, expected) => {
    expect(said(words)).toEqual(expected);
  });

  it.each<[string, string[]]>([
    ['Solid gold clasp', ['solid gold of clasp']],
    ['Gold-plated clasp', ['gold of clasp']],
    ['Solid silver clasp', ['solid silver of clasp']],
    ['Silver-plated clasp', ['silver of clasp']],
    ['Solid brass clasp', ['solid brass of clasp']],
    ['Brass-plated clasp', ['brass of clasp']],
    ['Zinc alloy clasp', ['zinc of clasp']],
    // The part behind the metal comes before one ahead of it, and the nearest ahead before those further off.
    ['Zip and clasp gold-plated', ['gold of clasp']],
    ['Clasp gold-plated zip and buckle', ['gold of zip']],
    ['Clasp. Gold-plated', ['gold of anything']],
  ])('a metal, whether it is solid, and its part: %s', (words, expected) => {
    expect(said(words)).toEqual(expected);
  });

  it.each<[string, (number | null)[]]>([
    ['Several available', [null]],
    ['1 available', []],
    ['2 available', [2]],
    ['999 available', [999]],
    ['1000 available', []],
    ['Not 2 available', []],
  ])('how many are in stock: %s', (words, expected) => {
    const counts = findClaims(listingOf('', words), []).flatMap((one) => (one.kind === 'in-stock' ? [one.count] : []));
    expect(counts).toEqual(expected);
  });

  it.each([
    'In vintage style',
    'Vintage-style tote',
    'Vintage look',
    'Inspired by vintage satchels',
    'Bought at a vintage fair',
    'From a vintage shop',
    'Stil vintage boutique',
    'ヴィンテージ風のバッグ',
    'ヴィンテージ加工',
  ])('“%s” says no age', (words) => {
    expect(said(words)).toEqual([]);
  });

  it('are found in what the page shows beside title and description, at their own places, and nothing twice', () => {
    const text = 'Ondrasse bag, stock photo\nMade of real leather.\nPhotos\nStock photos, no returns';
    const listing = listingOf('Ondrasse bag, stock photo', 'Made of real leather.', 'en', { text });
    const found = findClaims(listing, []).filter(({ kind }) => kind === 'not-this-piece' || kind === 'leather');
    expect(found.map((claim) => [shortClaim(claim), claim.at.field, claim.words])).toEqual([
      ['not-this-piece', 'title', 'stock photo'],
      ['not-this-piece', 'text', 'Stock photos'],
      ['leather', 'description', 'real leather'],
    ]);
    for (const { at, words } of found.filter(({ at }) => at.field === 'text'))
      expect(text.slice(at.start, at.end)).toBe(words);
  });

  it('leave the rest of the page to its own fields: no date, size or code is taken from it', () => {
    const listing = listingOf('Ondrasse bag', 'Brown.', 'en', { text: 'Made in 1994. Date code KV0915. 30 x 21 cm' });
    expect(findClaims(listing, []).map(({ kind }) => kind)).toEqual([]);
  });
});

describe('words of a family, and the same of something else', () => {
  it.each<Told>([
    ['This is a replica.', ['grade-of-copy']],
    ['Une copie parfaite.', ['grade-of-copy']],
    ['I once bought a replica.', []],
    ['No replica.', ['not grade-of-copy']],
    ['Handle copied by the cobbler.', []],
    ['Only the box is missing.', []],
    ['Empty box for sale.', ['packaging-only']],
    ['The empty box goes with it.', []],
    ['The pale handles have darkened.', []],
    ['There are no silly questions, ask away.', []],
    ['30 days to send it back, no questions.', []],
    ['1 available.', []],
    ['12 available.', ['in-stock']],
    ['999 available.', ['in-stock']],
    ['1000 available.', []],
    ['2 available.', ['in-stock']],
  ])('%s', (text, claims, title) =>
    expect(
      told(
        ['grade-of-copy', 'not grade-of-copy', 'packaging-only', 'fresh-part', 'hurry', 'in-stock', 'metal'],
        text,
        title,
      ),
    ).toEqual(claims),
  );
});

describe('words of age and wear, and the same of something else', () => {
  it.each<Told>([
    ['Found at a vintage fair.', []],
    ['A vintage bag.', ['vintage']],
    ['Vintage style.', []],
    ['傷なし。', ['not wear']],
    ['目立つ傷はありません。', []],
    ['The dust bag has scratches.', []],
    ['The base has scratches.', ['wear']],
  ])('%s', (text, claims, title) =>
    expect(told(['vintage', 'not vintage', 'antique', 'wear', 'not wear', 'stored'], text, title)).toEqual(claims),
  );
});
