import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim';
import { codeClaims } from '../../../src/claim/code';
import { conditionClaims } from '../../../src/claim/condition';
import { hedgedAuthorshipClaims } from '../../../src/claim/hedged-authorship';
import { dateClaims } from '../../../src/claim/made';
import { makerClaims } from '../../../src/claim/maker';
import { materialClaims } from '../../../src/claim/material';
import { measureClaims } from '../../../src/claim/measure';
import { modelClaims } from '../../../src/claim/model';
import { noCodeClaims } from '../../../src/claim/no-code';
import { originClaims } from '../../../src/claim/origin';
import { type ClaimDraft, passagesOf } from '../../../src/claim/passage';
import { paymentOutsideClaims } from '../../../src/claim/payment-outside';
import { replacedClaims } from '../../../src/claim/replaced';
import { returnsClaims } from '../../../src/claim/returns';
import { saleChannelClaims } from '../../../src/claim/sale-channel';
import { familyClaims } from '../../../src/claim/word-families';
import type { Listing } from '../../../src/listing/types';
import { otherWordsOf } from '../../other-words';
import { gapTurnsOf } from '../../turning';
import { listingOf, ondrasse, shortClaim } from './listing-of';
import { sentences } from './sentences';

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
  replaced: (listing) => replacedClaims(passagesOf(listing), listing.readAt),
  family: (listing) => familyClaims(passagesOf(listing), listing.readAt),
  'sale channel': (listing) => saleChannelClaims(passagesOf(listing)),
  origin: (listing) => originClaims(passagesOf(listing)),
  model: (listing) => modelClaims(passagesOf(listing), listing, [ondrasse], true),
  measure: (listing) => measureClaims(passagesOf(listing), listing),
  returns: (listing) => returnsClaims(passagesOf(listing), listing),
};

const rows = Object.entries(sentences).flatMap(([finder, all]) => all.map((sentence) => ({ finder, sentence })));

const said = (found: (Claim | ClaimDraft)[], gap: string): string =>
  found
    .map((claim) => `${shortClaim(claim as Claim)} “${claim.words.replace(gap, '…')}” ${claim.confidence}`)
    .join('; ') || 'nothing';

const answerOf = (finder: string, sentence: string, gap: string): string => {
  const [title, text] = sentence.includes(' // ') ? sentence.split(' // ') : ['', sentence];
  const grown = (one = '') => one.replace('…', gap);
  return said((finders[finder] as Finder)(listingOf(grown(title), grown(text), 'en')), gap);
};

it('how far words reach is as it is kept', async () => {
  const out = rows.flatMap(({ finder, sentence }) => [
    `${finder}: ${sentence}`,
    ...gapTurnsOf(66, (gap) => answerOf(finder, sentence, gap)),
  ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/reach.txt');
});

it('what a longer word and one left out change is as it is kept', async () => {
  const out = rows.flatMap(({ finder, sentence }) => {
    const plain = sentence.replace('…', ' ').replace(/ {2,}/g, ' ');
    return [
      `${finder}: ${plain}: ${answerOf(finder, plain, ' ')}`,
      ...otherWordsOf(plain, (other) => answerOf(finder, other, ' ')).map((line) => `  ${line}`),
    ];
  });
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/words.txt');
});
