import { describe, expect, it } from 'vitest';
import { type Claim, findClaims } from '../../../src/claim';
import { passagesOf } from '../../../src/claim/passage';
import { claimSchema } from '../../../src/claim/types';
import { readHtml } from '../listing/page';
import { listingOf, ondrasse, shortClaim } from './listing-of';

type Kind = Claim['kind'];
interface Row {
  sentence: string;
  /** How a page's table says it: label and value. */
  row: [string, string];
  says: string;
}

/** One sentence of each kind of claim, as a seller writes it, and the row of a table that says the same. */
const kinds: Record<Exclude<Kind, 'price' | 'not-placed'>, Row> = {
  made: { sentence: 'Made in 1994', row: ['Year of manufacture', '1994'], says: 'made 1994-1994' },
  bought: { sentence: 'Bought in 2010', row: ['Year of purchase', '2010'], says: 'bought 2010-2010' },
  condition: { sentence: 'Never used', row: ['Condition', 'Never used'], says: 'condition unused' },
  material: { sentence: 'Red suede lining', row: ['Lining', 'red suede'], says: 'lining = red suede' },
  replaced: { sentence: 'The zip was replaced', row: ['Repairs', 'zip replaced'], says: 'replaced zip' },
  appraised: { sentence: 'Appraised in 2018', row: ['Notes', 'appraised in 2018'], says: 'appraised' },
  measure: { sentence: 'Width 30 cm', row: ['Dimensions', 'Width 30 cm'], says: 'width 300' },
  maker: { sentence: 'Ondrasse handbag', row: ['Brand', 'Ondrasse'], says: 'maker Ondrasse' },
  model: { sentence: 'Ondrasse Carryall 30', row: ['Model', 'Carryall 30'], says: 'model Carryall 30' },
  origin: { sentence: 'Made in Belgium', row: ['Country of origin', 'Belgium'], says: 'origin BE' },
  code: { sentence: 'Date code KV0915', row: ['Date code', 'KV0915'], says: 'code KV0915' },
  'no-code': { sentence: 'There is no date code', row: ['Date code', 'illegible'], says: 'no-code' },
  'sale-channel': { sentence: 'Bought at an outlet', row: ['Bought at', 'outlet'], says: 'channel outlet' },
  'payment-outside': { sentence: 'Bank transfer please', row: ['Payment', 'Bank transfer'], says: 'payment-outside' },
  returns: { sentence: 'No returns accepted', row: ['Returns', 'No returns accepted'], says: 'returns no' },
  'hedged-authorship': {
    sentence: 'Inspired by Ondrasse',
    row: ['Notes', 'inspired by Ondrasse'],
    says: 'hedged-authorship',
  },
  'grade-of-copy': { sentence: 'Mirror quality', row: ['Quality', 'mirror quality'], says: 'grade-of-copy' },
  'not-this-piece': { sentence: 'Stock photo', row: ['Photos', 'stock photo'], says: 'not-this-piece' },
  'in-stock': { sentence: '12 available', row: ['Stock', '12 available'], says: 'in-stock' },
  remade: { sentence: 'Upcycled from an older tote', row: ['Notes', 'upcycled'], says: 'remade' },
  'not-vouched': {
    sentence: 'Not sure if it is real',
    row: ['Notes', 'authenticity not guaranteed'],
    says: 'not-vouched',
  },
  'packaging-only': { sentence: 'Empty box', row: ['Contents', 'empty box'], says: 'packaging-only' },
  assurance: { sentence: '100% authentic', row: ['Authenticity', '100% authentic'], says: 'assurance' },
  hurry: { sentence: 'Today only', row: ['Notes', 'today only'], says: 'hurry' },
  wear: { sentence: 'Some scratches', row: ['Flaws', 'some scratches'], says: 'wear' },
  leather: { sentence: 'Genuine leather', row: ['Material', 'Genuine leather'], says: 'leather' },
  metal: { sentence: 'Solid brass buckle', row: ['Hardware', 'solid brass'], says: 'solid brass of ' },
  'fresh-part': { sentence: 'The handles are still pale', row: ['Handles', 'no patina'], says: 'fresh-part' },
  stored: { sentence: 'Stored for years', row: ['Notes', 'stored for years'], says: 'stored' },
  'age-word': { sentence: 'A vintage piece', row: ['Type', 'vintage'], says: 'vintage' },
};

it('a title, a description, and the visible text where that is missing, are passages; what is not there is none', () => {
  const fields = (...parts: Parameters<typeof listingOf>) => passagesOf(listingOf(...parts)).map(({ field }) => field);
  expect(fields('Bag', 'Of leather.', null, { text: 'Bag. Of leather.' })).toEqual(['title', 'description']);
  expect(fields('Bag', '', null, { text: 'Bag. Of leather.' })).toEqual(['title', 'text']);
  expect(fields('Bag', ' ', null, { text: 'Bag. Of leather.' })).toEqual(['title', 'text']);
  expect(fields('', 'Of leather.')).toEqual(['description']);
  expect(fields('Bag', '')).toEqual(['title']);
  expect(fields('', '', null, { text: ' \n' })).toEqual([]);
});

/** Kinds that a place cannot say, and why. */
const without: { kind: Kind; where: string; because: string }[] = [
  {
    kind: 'not-placed',
    where: 'every passage',
    because: 'it is what no finder could say of anything, with a test of its own',
  },
  {
    kind: 'price',
    where: 'every passage',
    because:
      'a price is a field of the page, read where it stands beside the piece; a sum in a sentence is one of many ("paid 450", "postage 5")',
  },
];

const filler = 'A brown bag for the day, with a pocket for the phone.';
const pageOf = (title: string, description: string, row?: [string, string]) =>
  readHtml(`<!doctype html><html lang="en"><body><main><h1>${title}</h1><p class="price">€450.00</p>
    <table><tr><th>Sold in</th><td>one piece</td></tr>${row ? `<tr><th>${row[0]}</th><td>${row[1]}</td></tr>` : ''}</table>
    <section class="description"><h2>Description</h2><p>${description}</p></section></main></body></html>`);

const saidBy = async (page: ReturnType<typeof pageOf>, replies: string[] = []) =>
  findClaims(await page, [ondrasse], replies).map((claim) => ({ says: shortClaim(claim), ...claim }));

describe('every kind of claim is found in every kind of passage', () => {
  it('has a sentence for each kind, or says why it has none', () => {
    const all = claimSchema.options.map(({ shape }) => shape.kind.value);
    const told = [...Object.keys(kinds), ...without.map(({ kind }) => kind)];
    expect(told.sort()).toEqual(all.sort());
    expect(without.filter(({ because }) => because.length < 20)).toEqual([]);
  });

  const rows = Object.entries(kinds) as [Kind, Row][];
  const ofKind = (claims: Awaited<ReturnType<typeof saidBy>>, kind: Kind, says: string, fields: string[]) =>
    claims.some((claim) => claim.kind === kind && claim.says.startsWith(says) && fields.includes(claim.at.field));

  it.each(rows)('%s in a title', async (kind, { sentence, says }) => {
    expect(ofKind(await saidBy(pageOf(sentence, filler)), kind, says, ['title'])).toBe(true);
  });

  it.each(rows)('%s in a description', async (kind, { sentence, says }) => {
    const claims = await saidBy(pageOf('Brown bag', `${filler} ${sentence}.`));
    expect(ofKind(claims, kind, says, ['description'])).toBe(true);
  });

  it.each(rows)('%s in a row of a table', async (kind, { row, says }) => {
    expect(ofKind(await saidBy(pageOf('Brown bag', filler, row)), kind, says, ['data', 'text'])).toBe(true);
  });

  it.each(rows)('%s in a reply', async (kind, { sentence, says }) => {
    const claims = await saidBy(pageOf('Brown bag', filler), [`Hello! ${sentence}. Kind regards`]);
    expect(ofKind(claims, kind, says, ['reply'])).toBe(true);
  });
});

describe('rows of a table', () => {
  const claimsOf = async (...rows: [string, string][]) => {
    const [first, ...others] = rows;
    const more = others.map(([name, value]) => `</td></tr><tr><th>${name}</th><td>${value}`).join('');
    const claims = await saidBy(pageOf('Brown bag', filler, first && [first[0], `${first[1]}${more}`]));
    return claims.filter(({ kind }) => kind !== 'price').map(({ says }) => says);
  };

  it.each<[string, [string, string][], string[]]>([
    [
      'of the sale and the seller say nothing of the piece',
      [
        ['Posted', '12 March 2026'],
        ['Member since', '2015'],
        ['Ships from', 'Belgium'],
      ],
      [],
    ],
    [
      'of the site are none',
      [
        ['Founded', '1998'],
        ['Our bags', 'made in Belgium since 1952'],
      ],
      [],
    ],
    ['with a colour name no material', [['Colour', 'Leather brown']], []],
    [
      'German',
      [
        ['Baujahr', '1994'],
        ['Innenfutter', 'rotes Wildleder'],
        ['Herkunftsland', 'Belgien'],
      ],
      ['made 1994-1994', 'lining = red suede', 'origin BE'],
    ],
    [
      'French',
      [
        ['Année de fabrication', '1994'],
        ['Doublure', 'daim rouge'],
        ["Pays d'origine", 'Belgique'],
      ],
      ['made 1994-1994', 'lining = red suede', 'origin BE'],
    ],
    [
      'Italian',
      [
        ['Anno di produzione', '1994'],
        ['Fodera', 'camoscio rosso'],
        ["Paese d'origine", 'Belgio'],
      ],
      ['made 1994-1994', 'lining = red suede', 'origin BE'],
    ],
    [
      'Spanish',
      [
        ['Año de fabricación', '1994'],
        ['Forro', 'ante rojo'],
        ['País de origen', 'Bélgica'],
      ],
      ['made 1994-1994', 'lining = red suede', 'origin BE'],
    ],
    [
      'Dutch',
      [
        ['Bouwjaar', '1994'],
        ['Voering', 'rode suède'],
        ['Land van herkomst', 'België'],
      ],
      ['made 1994-1994', 'lining = red suede', 'origin BE'],
    ],
    [
      'Japanese',
      [
        ['製造年', '1994年'],
        ['裏地', '赤色のスエード'],
        ['原産国', 'ベルギー'],
      ],
      ['made 1994-1994', 'lining = red suede', 'origin BE'],
    ],
  ])('%s', async (_, rows, expected) => {
    expect((await claimsOf(...rows)).sort()).toEqual([...expected].sort());
  });

  it('say once what the page’s own data says as well', async () => {
    const page = await pageOf('Brown bag', filler, ['Condition', 'Used']);
    const data = { value: 'used' as const, origin: 'json-ld' as const, where: 'itemCondition', confidence: 0.9 };
    const claims = findClaims({ ...page, condition: [data] }, []);
    expect(claims.filter(({ kind }) => kind === 'condition').map(shortClaim)).toEqual(['condition used']);
  });
});
