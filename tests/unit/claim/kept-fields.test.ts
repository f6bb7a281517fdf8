import { expect, it } from 'vitest';
import { type Claim, findClaims, lotOf, placeClaims, possibleMakerName } from '../../../src/claim';
import type { Listing, Measure, Origin, Price } from '../../../src/listing/types';
import { otherWordsOf } from '../../other-words';
import { turnsOf } from '../../turning';
import { listingOf, ondrasse, shortClaim } from './listing-of';

/*
 * What is claimed by a page's own fields and rows, by titles of several pieces, and how far a list goes on. Kept whole:
 * where it changes on purpose, `npm test -- unit/claim/kept --update` writes it anew.
 */

const whole = (claim: Claim) => {
  const { at, confidence, words, id } = claim;
  return `${shortClaim(claim)} “${words}” ${at.field} ${at.start}–${at.end}, ${confidence}, ${id}`;
};
const by = <T>(origin: Origin, ...values: T[]) =>
  values.map((value) => ({ value, origin, where: 'somewhere', confidence: 0.7 }));
const measure = (dimension: Measure['dimension'], mm: number): Measure => ({
  dimension,
  mm,
  precisionMm: 5,
  unit: 'cm',
  words: `${mm / 10} cm`,
});
const price = (minor: number, exponent: number, currency: string | null, kind: Price['kind'] = 'sale'): Price => ({
  kind,
  minor,
  exponent,
  currency,
  currencies: currency ? [currency] : ['USD', 'CAD'],
});

const fields: Record<string, Partial<Listing>> = {
  'a price of each kind, the first of a kind': {
    price: by(
      'json-ld',
      price(45_000, 2, 'EUR'),
      price(46_000, 2, 'EUR'),
      price(5, 2, 'EUR', 'was'),
      price(0, 2, null),
    ),
  },
  'currencies without and with three decimals': {
    price: by('json-ld', price(12_000, 0, 'JPY'), price(7, 3, 'KWD', 'was'), price(1234, 3, 'KWD', 'shipping')),
  },
  'a sum in no currency that is known': {
    price: by('visible', { kind: 'sale', minor: 45_000, exponent: 2, currency: null, currencies: [] } satisfies Price),
  },
  'a sum with its own words': { price: [{ ...by('visible', price(45_000, 2, 'EUR'))[0]!, words: '450 euros' }] },
  'a condition of the page': { condition: by('json-ld', 'used') },
  'a condition in the words of the data': {
    condition: [{ ...by('json-ld', 'used' as const)[0]!, words: 'https://schema.org/UsedCondition' }],
  },
  'a condition in its own words': { condition: [{ ...by('microdata', 'as-new' as const)[0]!, words: 'barely worn' }] },
  'a condition that was only seen': { condition: by('visible', 'used') },
  'a condition that was seen before the data': {
    condition: [...by('visible', 'new'), ...by('json-ld', 'worn')] as never,
  },
  'a material of the page': { material: by('json-ld', 'Grained Calf', 'Canvas') },
  'a material that was only seen': { material: by('visible', 'Grained Calf') },
  'returns of the page': { returns: by('json-ld', { accepted: true, days: 14, words: '14 days' }) },
  'returns in the words of the data': {
    returns: by('json-ld', { accepted: false, days: null, words: 'MerchantReturnNotPermitted' }),
  },
  'returns accepted in the words of the data': {
    returns: by('json-ld', { accepted: true, days: 14, words: 'MerchantReturnFiniteReturnWindow' }),
  },
  'returns that were only seen': { returns: by('visible', { accepted: true, days: 14, words: '14 days' }) },
  'ways to pay': { payment: by('visible', 'Bank transfer', 'Card', 'Gift cards') },
  'sizes of the page': { measures: by('json-ld', measure('width', 300), measure('height', 210)) },
  'a model of the page': { model: by('json-ld', 'carry-all 30', 'Boulevard 25') },
  'a model that no file knows': { model: by('json-ld', 'Parade 12') },
  ...Object.fromEntries(
    [
      'Ondrasse',
      'Ondrasse Bruxelles',
      'ondrasse, 2019',
      'Ondrasse vintage',
      'Ondrasse or Velmont',
      'Ondrasse Ondrasse',
      'Unbranded',
      '-',
      '',
      'Velmont',
      'Not Ondrasse',
    ].map((value) => [`the field for the maker says “${value}”`, { maker: by('json-ld', value) }]),
  ),
  'an empty field for the maker before a full one': { maker: by('json-ld', 'n/a', 'Ondrasse') },
};

it('what a field of the page claims, beside a text that says the same and one that does not', async () => {
  const out = Object.entries(fields).flatMap(([name, more]) =>
    ['', 'Ondrasse bag, used, leather, 30 cm wide. No returns.', 'Velmont satchel.'].flatMap((description) => [
      `${name} // ${description}`,
      ...findClaims(listingOf(description && 'Leather bag', description, 'en', more), [ondrasse]).map(
        (claim) => `  ${whole(claim)}`,
      ),
    ]),
  );
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/fields.txt');
});

const rows = `Year: 1994|Year\n1994|Year:\n1994\nLining: red suede|Lining\nred suede|LINING : red suede|Zip: brass, replaced
  |Colour: tan|Material: leather|Material: Leather (120)|Material\nLeather (120)|Condition: used|Condition\nCondition: used
  |Date code: KV0915|Serial number\nKV0915|Year of purchase: 2010|Bought at\noutlet|Country of origin: Belgium
  |Seller since: 2012|Posted: 1994|Year: 1994\nYear: 1994|Notes: upcycled|Repairs: zip replaced\nRepairs\nlining redone
  |Width: 30 cm|Lining\nHandle\nred suede|Year\n\n1994|Année\n1994|Baujahr: 1994|製造年：1994年|Jahr\n1994
  |A label of forty characters that says zip: 1994|Zip that was made in the workshop of the m: 1994`;

it('what the rows of a page claim', async () => {
  const out = rows.split(/\s*\|/).flatMap((row) => [
    row.replaceAll('\n', ' ⏎ '),
    ...findClaims(listingOf('Ondrasse bag', 'A brown bag.', 'en', { text: `Ondrasse bag\nA brown bag.\n${row}\n` }), [
      ondrasse,
    ])
      .filter(({ at }) => at.field === 'data' || at.field === 'text')
      .map((claim) => `  ${whole(claim)}`),
  ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/rows.txt');
});

const lots = `handbag and wallet|handbag and a wallet|handbag, wallet|handbag & wallet set|handbag with matching wallet
  |Carryall 25 and matching wallet|matching wallet|wallet and handbag|bag and wallet pocket|tote and pouch|tote with matching pouch
  |tote and matching clutch in red|bag plus belt made in 1990|bag and wallet - new|bag and wallet from 1994|two bags|two bags in one
  |pair of bags|2 bags as one|2 bags in 10|Tasche mit passender Geldbörse|Tasche und Geldbörse aus Leder|sac et portefeuille assorti
  |borsa con portafoglio abbinato|bolso y cinturón a juego|tas en portemonnee|バッグと財布|バッグとお揃いの財布|バッグと財布のセット
  |purse and wallet|bag and wallet and belt|satchel, tote and wallet|strap for handbag and wallet|and wallet`;
const texts = [
  'The bag was made in 1994. The wallet was made in 2003.',
  'Bag and wallet were bought in 2010. The bag is of 1994 and the wallet has a brass zip.',
  'Made in 1994. Made in Belgium the wallet. Brass hardware. The strap of the bag is brown leather.',
  'The wallet came with the bag, which was made in 1994. Bag, and wallet of 1990. Two bags & wallet. It is of 1991.',
  'Red suede lining in the bag, no date code; in the wallet date code KV0915. The bag, and the wallet are vintage.',
];

it('which pieces a title offers, and of which of them a text speaks', async () => {
  const out = lots.split(/\s*\|/).flatMap((title) => {
    const described = (text: string, said = title) => listingOf(`Ondrasse ${said}`, text);
    const lot = lotOf(described('A piece.'));
    const other = otherWordsOf(title, (one) => lotOf(described('A piece.', one))?.pieces.join(' | ') ?? 'one piece');
    if (!lot) return [`${title}: one piece`, ...other.map((line) => `  ${line}`)];
    return [
      `${title}: “${lot.words}” ${lot.pieces.join(' | ')}`,
      ...other.map((line) => `  ${line}`),
      ...texts.flatMap((text) => {
        const claims = findClaims(described(text), [ondrasse]);
        const placed = placeClaims(described(text), lot, claims);
        return claims.map((claim) => {
          const of = placed.get(claim.id);
          return `  ${claim.at.field} ${claim.at.start} ${shortClaim(claim)}: ${typeof of === 'object' ? of.piece : of}`;
        });
      }),
    ];
  });
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/lots.txt');
});

const names = `Velmont satchel|satchel by Velmont|brown leather bag|VELMONT|velmont|Velmont-Rook bag|Bag 1234|Ab cd bag
  |Sac en cuir Marlinde|Paris bag|Tasche aus München|バッグ マルレンヌ|マルレンヌ 革 バッグ|Leather bag, Velmont & Rook|Bag of the 1970s
  |ベルギー製マルレンヌ|Bag made in Belgium-Velmont|Bag, made in Belgium Velmont|\u00adVelmont satchel|Leather\u200b bag Velm\u00adont|O'Velmont's bag|Vel.mont|${'Velmont'.repeat(4)} bag`;

it('which word may be the name of a maker that no file knows', async () => {
  const out = names
    .split(/\s*\|/)
    .flatMap((words) => [
      `${words}: ${possibleMakerName(listingOf(words, ''))}`,
      `  in a text: ${possibleMakerName(listingOf('Leather bag', `A bag. ${words}`))}`,
      `  later in its sentence: ${possibleMakerName(listingOf('Leather bag', `I sell a bag and ${words}, as seen. Then Second.`))}`,
      `  claimed beside: ${findClaims(listingOf(words, 'By Ondrasse. Made by Ondrasse.'), [ondrasse]).map(shortClaim).join(', ')}`,
    ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/names.txt');
});

it('how far lists, titles and texts are followed', async () => {
  const claims = (listing: Listing) => findClaims(listing, [ondrasse]).map(shortClaim).join(', ') || 'nothing';
  const words = (many: number, word: string) => `${word} `.repeat(many);
  const rowsAhead = (many: number) => `Lining: suede\n`.repeat(many);
  const sweeps: Record<string, [last: number, (steps: number) => string, first?: number, by?: number]> = {
    'words to be found by': [9, (steps) => claims(listingOf('Leather bag', `${'bag, '.repeat(steps)}Ondrasse, gift`))],
    'short ones among long ones': [
      9,
      (steps) =>
        claims(listingOf('Leather bag', `${'a thing of some length, '.repeat(steps)}${'red, '.repeat(10)}Ondrasse`)),
    ],
    'a line before a name': [
      420,
      (steps) => claims(listingOf('Leather bag', `Tags: ${'v'.repeat(steps)} Ondrasse`)),
      370,
    ],
    'parts of one list': [
      11,
      (steps) =>
        claims(
          listingOf(
            '',
            `Replaced zip${', lining, handle, strap, lock, base, edge, tab, trim, stitching, hardware, body'
              .split(',')
              .slice(0, steps + 1)
              .join(',')}`,
          ),
        ),
    ],
    'parts ahead of one word': [
      11,
      (steps) =>
        claims(
          listingOf(
            '',
            `${'lining, handle, strap, lock, base, edge, tab, trim, stitching, hardware, body, '.split(' ').slice(0, steps).join(' ')} zip and lining were replaced`,
          ),
        ),
    ],
    'a name late in a text': [
      3010,
      (steps) => String(possibleMakerName(listingOf('Leather bag', `I sell ${'a'.repeat(steps)} a Velmont satchel`))),
      2960,
    ],
    'a thing named late in a title': [
      310,
      (steps) => claims(listingOf(`${'a'.repeat(steps)} box`, 'The box has scratches. Made in 1994.')),
      280,
    ],
    'a row after so many': [
      103,
      (steps) =>
        claims(listingOf('Bag', 'A brown bag.', 'en', { text: `A brown bag.\n${rowsAhead(steps)}Year: 1994` })).slice(
          -40,
        ),
      96,
    ],
    'grades of a legend': [
      6,
      (steps) =>
        claims(listingOf('', ['new', 'like new', 'used', 'very good', 'damaged', 'worn'].slice(0, steps).join(' / '))),
    ],
    'the gap in a legend': [
      45,
      (steps) => claims(listingOf('', `new ${'v'.repeat(steps)} like new / used / very good condition`)),
      30,
    ],
    'words before what a title offers second': [
      64,
      (steps) => lotOf(listingOf(`Handbag ${'v'.repeat(steps)} and matching wallet`, 'x'))?.pieces.join('|') ?? 'one',
      40,
    ],
    'words of a maker before a title': [4, (steps) => claims(listingOf(`${words(steps, 'the')}Ondrasse bag`, ''))],
  };
  const out = Object.entries(sweeps).flatMap(([name, [last, answer, first, by]]) => [
    name,
    ...turnsOf(last, answer, first, by).map((turn) => `  ${turn.replace(/v{9,}|a{9,}/g, '…')}`),
  ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/lists.txt');
});
