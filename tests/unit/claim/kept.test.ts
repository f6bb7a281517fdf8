import { expect, it } from 'vitest';
import { type Claim, findClaims, lotOf, placeClaims, possibleMakerName } from '../../../src/claim';
import type { Listing } from '../../../src/listing/types';
import { builtInMakers } from '../../../src/maker';
import { truthFiles, truthRows } from '../../reference/cases/truth-case';
import { stated } from '../check/sample';
import germanic from './germanic.json' with { type: 'json' };
import japanese from './japanese.json' with { type: 'json' };
import { listingOf, ondrasse } from './listing-of';
import otherThings from './other-things.json' with { type: 'json' };
import romance from './romance.json' with { type: 'json' };

/*
 * The claims of every sentence beside this, whole: value, words, place, polarity and how sure. Where they change on
 * purpose, `npm test -- unit/claim/kept --update` writes them anew; the difference is looked at before it is committed.
 */

type Table = Record<string, [string, string[]][]>;
const tables = { germanic, romance, japanese, otherThings } as unknown as Record<string, Table>;

function line({ id, kind, words, at, confidence, ...value }: Claim): string {
  const said = Object.entries(value).map(
    ([name, own]) => `${name} ${typeof own === 'object' ? JSON.stringify(own) : own}`,
  );
  // Corrections that were kept name a claim by its id: the same words have the same one in the next build.
  expect(id.startsWith(`${kind}-`)).toBe(true);
  return `  ${id} ${said.join(', ')} “${words}” ${at.field} ${at.start}-${at.end}, ${confidence}`;
}

for (const [name, table] of Object.entries(tables))
  it.each(Object.entries(table))(`all that ${name} sentences claim is as it is kept: %s`, async (language, rows) => {
    const lines = rows.flatMap(([sentence]) => [
      sentence,
      ...findClaims(listingOf('', sentence, language), [ondrasse]).map(line),
    ]);
    expect(lines.length).toBeGreaterThan(rows.length / 2);
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/${name}-${language}.txt`);
  });

it('titles and descriptions together claim what is kept', async () => {
  const listings: [string, string, string][] = [
    [
      'Ondrasse Carryall 30 brown leather, 1994',
      'Made in Belgium in 1994, code KV4109. Lining olive twill. Bought 1995.',
      'en',
    ],
    [
      'Vintage shoulder bag in the style of Ondrasse',
      'Not an Ondrasse. Boulevard 25? Brass clasp, gold-plated chain.',
      'en',
    ],
    ['Ondrasse or Calderwick & Rook bag', 'No date code inside. Never worn; the strap was replaced in 2019.', 'en'],
    [
      'Handtasche Ondrasse',
      'Carry-All 30 aus den 80ern, Futter khaki Twill, Nr. KV8803. Umtausch ausgeschlossen, nur Überweisung.',
      'de',
    ],
    [
      'Sac Ondrasse Bruxelles',
      'Années 70, fabriqué en Belgique, doublure refaite. Virement uniquement, ni repris ni échangé.',
      'fr',
    ],
    ['オンドラス ハンドバッグ 1990年代', '本革、ベルギー製、刻印なし。ノークレーム・ノーリターン。', 'ja'],
    ['', '', 'en'],
    ['Ondrasse bag, leather, with zip', 'Some words.', 'en'],
    ['Ondrasse brass bag', 'A canvas bag. Of suede, canvas.', 'en'],
    ['Belt bag', 'The belt has scratches.', 'en'],
    ['Cartera Ondrasse', 'La cartera tiene arañazos. El cinturón tiene arañazos.', 'es'],
    ['Ondrasse bag', 'Only for lovers of it: a strap. In stock: 1, 2 available, 999 in stock, 1000 in stock.', 'en'],
    ['Ondrasse', 'Ondrasse Ondrasse Ondrasse', 'en'],
  ];
  const lines = listings.flatMap(([title, description, language]) => [
    `${title} — ${description}`,
    ...findClaims(
      listingOf(title, description, language),
      [ondrasse],
      ['It is from 1995, I think. The lining is red.'],
    ).map(line),
  ]);
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot('./kept/titles.txt');
});

/** What a listing's title is taken to say: which pieces it offers, of which of them the rest is said, who may have made it. */
function aboutTitle(listing: Listing, claims: readonly Claim[]): string[] {
  const lot = lotOf(listing);
  const name = possibleMakerName(listing);
  const placed = lot ? [...placeClaims(listing, lot, claims)] : [];
  return [
    ...(name ? [`  may be made by ${name}`] : []),
    ...(lot ? [`  lot “${lot.words}” ${lot.pieces.join(' | ')}`] : []),
    ...placed.map(([id, of]) => `    ${id} of ${typeof of === 'string' ? of : of.piece}`),
  ];
}

it.each(truthFiles)('the listings of the table of %s cases claim what is kept', async (file) => {
  const lines = truthRows(file).flatMap(({ name, title, text, language, maker }) => {
    const listing = listingOf(title, text, language, maker === null ? {} : { maker: stated(maker) });
    const claims = findClaims(listing, builtInMakers);
    return [name, ...claims.map(line), ...aboutTitle(listing, claims)];
  });
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/cases-${file}.txt`);
});
