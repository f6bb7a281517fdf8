import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim';
import { codeClaims } from '../../../src/claim/code';
import { conditionClaims } from '../../../src/claim/condition';
import { hedgedAuthorshipClaims } from '../../../src/claim/hedged-authorship';
import { dateClaims } from '../../../src/claim/made';
import { makerClaims } from '../../../src/claim/maker';
import { materialClaims } from '../../../src/claim/material';
import { noCodeClaims } from '../../../src/claim/no-code';
import { type ClaimDraft, passagesOf } from '../../../src/claim/passage';
import { paymentOutsideClaims } from '../../../src/claim/payment-outside';
import { replacedClaims } from '../../../src/claim/replaced';
import { familyClaims } from '../../../src/claim/word-families';
import type { Listing } from '../../../src/listing/types';
import { gapTurnsOf } from '../../turning';
import { listingOf, ondrasse, shortClaim } from './listing-of';

/*
 * How far words reach: between a word and what it is said of stands more and more, and kept is where the answer turns.
 * Where that changes on purpose, `npm test -- unit/claim/kept --update` writes it anew.
 */

type Finder = (listing: Listing) => (Claim | ClaimDraft)[];
const finders: Record<string, Finder> = {
  code: (listing) => codeClaims(passagesOf(listing), [ondrasse]),
  condition: (listing) => conditionClaims(passagesOf(listing), listing),
  hedged: (listing) => hedgedAuthorshipClaims(passagesOf(listing), [ondrasse], null),
  'hedged beside another': (listing) =>
    hedgedAuthorshipClaims(passagesOf(listing), [ondrasse], { names: ['Velmont'], file: null }),
  date: (listing) => dateClaims(passagesOf(listing), listing.readAt),
  maker: (listing) => makerClaims(passagesOf(listing), listing, [ondrasse]),
  material: (listing) => materialClaims(passagesOf(listing), listing, [ondrasse]),
  'no code': (listing) => noCodeClaims(passagesOf(listing)),
  payment: (listing) => paymentOutsideClaims(passagesOf(listing), listing),
  replaced: (listing) => replacedClaims(passagesOf(listing)),
  family: (listing) => familyClaims(passagesOf(listing)),
};

/** A description, or a title and a description parted by " // "; … grows. */
const sentences: Record<keyof typeof finders, string[]> = {
  code: [
    'Date code…KV0915.',
    'Stamped inside…854.',
    'Date code is…KV0915',
    'Colour code…KV0915',
    'KV0915…cm',
    'KV 0915… years',
    'Code KV0915…KV1994',
    'Code…(K)1234',
    'Stamp "…KV0915"',
    'Similar to the one…with KV0915',
  ],
  condition: [
    'N: new,…A: like new,…B: used,…C: very good',
    'A: like new, B: used, C: very good,…this is good condition',
  ],
  hedged: [
    'Inspired by…Ondrasse',
    'Ondrasse…style bag',
    'Probably…Ondrasse',
    'In the style of…the 1970s',
    'In the style of…Ondrasse',
    'Homage…Ondrasse style',
    'The zip…is not original',
    'Not…a replica of Ondrasse',
  ],
  'hedged beside another': ['Velmont bag, inspired by…Ondrasse', 'Ondrasse…style. Made by Velmont'],
  date: [
    'Made…in 1994',
    'Bought…in 1995',
    'Made in 1994,…bought in 2001',
    'In 1994…bought',
    'From 1994,…replaced zip',
    'Made in Belgium,…1994',
    'Serviced…in 2019',
    'Since…1994',
    'In the style of…the 1970s',
    '1970s…style bag',
    'The dust bag…is from 2019',
    'The zip is…from 2010',
    'The model was made…from 1985 to 2012',
    'My daughter…is 12 years old',
    'It is 12 years…old',
    'Sold with a wallet…of 2012',
    'I think it is…from 1994',
    'From 1994,…I think',
    'Similar to the…model of 1994',
    '…1994',
    '1994…model',
  ],
  maker: [
    'Leather bag // My…Ondrasse wallet is lovely',
    'Leather bag // It fits…my things beside the Ondrasse',
    'Leather bag // Ondrasse…fits inside',
    'Leather bag // Like…Ondrasse',
    'Leather bag // The Ondrasse…wallet',
    'Leather bag // A wallet…by Ondrasse',
    'Velmont satchel // Made by…Ondrasse',
    'Leather bag // Tags:…Ondrasse',
    'Leather bag // red, bag,…leather, Ondrasse, brown, tan, gift',
    'Leather bag // Not…an Ondrasse',
    'Leather bag // See my…other Ondrasse',
    '…Ondrasse bag',
  ],
  material: [
    'Red…suede lining',
    'Lining in…suede',
    'The lining…is of red suede',
    'The lining is of red…suede',
    'Suede…lining, leather body',
    'Leather…bag',
    'Bag,…of leather',
    'Calf leather that I like…for a bag of this sort',
    'With a leather…box',
    'Sold with a…wallet of red leather',
    'No…leather lining',
    'Doublure en…daim rouge',
    'Hardware…brass',
  ],
  'no code': ['The stamp…is worn off', 'No…date code', 'The code 854…is faded', 'No date code, code…illegible'],
  payment: [
    'I never ask…for bank transfers',
    'No…bank transfer',
    'Bank transfer…is not accepted',
    'Überweisung…nehme ich nicht an',
    'Bank transfer through the…site',
    'Write to me at…name@mail.example',
  ],
  replaced: [
    'Replaced…zip',
    'Replaced zip…and lining',
    'Zip, lining…and handle were replaced',
    'The zip…was replaced',
    'The zip needs…to be replaced',
    'Replaced zip, lining, handle, strap, lock, base, edge, tab,…and trim',
    'Zip replaced…could be done',
    'Nothing…was replaced',
    'Lining…relined',
    'New…zip',
  ],
  family: [
    'Not…vintage',
    'Vintage…fair',
    'Vintage…style',
    'Style of the…vintage',
    'Not sure if it is real…leather',
    'Not sure if it is…real',
    'There are…no silly questions',
    'Real leather…box',
    'Real leather…lining',
    'The box…has scratches',
    'With…box, some scratches',
    'Gold plated…clasp',
    'Clasp is…gold plated',
    'Protects from…scratches',
    'Nothing…faded',
    'Kratzer…habe ich keine',
    'If there were…scratches',
    'No scratches…no patina',
    'Faux leather…pouch',
  ],
};

const rows = Object.entries(sentences).flatMap(([finder, all]) => all.map((sentence) => ({ finder, sentence })));

const said = (found: (Claim | ClaimDraft)[], gap: string): string =>
  found
    .map((claim) => `${shortClaim(claim as Claim)} “${claim.words.replace(gap, '…')}” ${claim.confidence}`)
    .join('; ') || 'nothing';

it('how far words reach is as it is kept', async () => {
  const out = rows.flatMap(({ finder, sentence }) => [
    `${finder}: ${sentence}`,
    ...gapTurnsOf(66, (gap) => {
      const [title, text] = sentence.includes(' // ') ? sentence.split(' // ') : ['', sentence];
      const grown = (one = '') => one.replace('…', gap);
      const find = finders[finder] as Finder;
      return said(find(listingOf(grown(title), grown(text), 'en')), gap);
    }),
  ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/reach.txt');
});
