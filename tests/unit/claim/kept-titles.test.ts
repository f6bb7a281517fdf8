import { expect, it } from 'vitest';
import { lotOf, possibleMakerName } from '../../../src/claim';
import { turnsOf } from '../../turning';
import { listingOf } from './listing-of';

/*
 * How far a title is followed for the pieces that it offers, and how much of it is a name. Where that changes on
 * purpose, `npm test -- unit/claim/kept --update` writes it anew.
 */

const lot = (title: string) => {
  const found = lotOf(listingOf(title, 'A piece.'));
  return found ? `“${found.words}” ${found.pieces.join(' | ')}` : 'one piece';
};
const name = (title: string, text = '') => String(possibleMakerName(listingOf(title, text)));
const vs = (many: number) => 'v'.repeat(many);

const sweeps: Record<string, (steps: number) => string> = {
  'spaces before what is joined': (steps) => lot(`Handbag${' '.repeat(steps)}and wallet`),
  'spaces behind what joins': (steps) => lot(`Handbag and${' '.repeat(steps)}wallet`),
  'words between what joins and the piece': (steps) => lot(`Handbag and ${'a '.repeat(steps)}wallet`),
  'words between what matches and the piece': (steps) => lot(`Handbag and matching ${'a '.repeat(steps)}wallet`),
  'letters before what is joined': (steps) => lot(`Handbag ${vs(steps)} and wallet`),
  'letters behind a piece': (steps) => lot(`Handbag and wallet${vs(steps)}`),
  'spaces behind a piece': (steps) => lot(`Handbag and wallet${' '.repeat(steps)}matching`),
  'spaces behind two bags': (steps) => lot(`Two bags${' '.repeat(steps)}in one`),
  'letters behind two in one': (steps) => lot(`Two bags in one${vs(steps)}`),
  'letters of a name': (steps) => name(`V${vs(steps)} satchel`),
  'letters of a second word': (steps) => name(`Velmont & R${vs(steps)} satchel`),
  'words of a name': (steps) => name(`Velmont${' & Rook'.repeat(steps)} satchel`),
  'words behind a word that opens a name': (steps) => name(`Satchel, Atelier Velmont${' Rook'.repeat(steps)}`),
  'letters behind a word that opens a name': (steps) => name(`Satchel, Atelier V${vs(steps)}`),
  'spaces in a name': (steps) => name(`Velmont${' '.repeat(steps)}&${' '.repeat(steps)}Rook satchel`),
  'words of whom it is by': (steps) => name(`Satchel by Velmont${' Rook'.repeat(steps)}`),
  'letters of whom it is by': (steps) => name(`Satchel by V${vs(steps)}`),
  'letters of his second word': (steps) => name(`Satchel by Velmont R${vs(steps)}`),
  'letters of a name in katakana': (steps) => name(`バッグ マ${'ル'.repeat(steps)}`),
  'parts of a name in katakana': (steps) => name(`バッグ マルレンヌ${'・ルーク'.repeat(steps)}`),
  'letters of the second part in katakana': (steps) => name(`バッグ マルレンヌ・${'ル'.repeat(steps)}`),
  'signs before a text’s first word': (steps) => name('Leather bag', `${'"'.repeat(steps)}Velmont it says`),
  'spaces behind a sentence': (steps) => name('Leather bag', `A bag.${' '.repeat(steps)}Velmont it says`),
  'spaces before what a name names': (steps) => name('Leather bag', `A bag. Velmont${' '.repeat(steps)}satchel`),
  'letters of what a name names': (steps) => name('Leather bag', `A bag. Velmont ${vs(steps)}satchel`),
};

it('how far a title is followed is as it is kept', async () => {
  const out = Object.entries(sweeps).flatMap(([what, answer]) => [
    `${what}: ${answer(2)}`,
    ...turnsOf(66, answer).map((turn) => `  ${turn.replace(/v{9,}|ル{9,}/g, '…')}`),
  ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/title-limits.txt');
});

const titles = `Handbag & wallet|Handbag + a wallet|Handbag plus wallet|Handbag with wallet|Handbag with matching wallet
  |Handbag with wallet matching|Handbag, matching wallet|Handbag and wallet set|Handbag and wallet 1994|Handbag and wallet pocket
  |Handbag and wallet - new|Handbag and wallet-new|Handbag and wallet, new|Carryall and wallet|Carryall and matching wallet
  |Handbag and pouch|Handbag and matching pouch|Handbag and clutch|Handbag and purse|Purse and wallet|Two bags in one|Two bags in ones
  |Two bags as one|Two bags in 1|Two handbags, in one|Lot of 2|バッグと財布|バッグと財布入れ|バッグとお揃いの財布`;
const names = `De Rijk satchel|Satchel De Rijk|Satchel, De Rijk|Satchel de Rijk|Atelier Velmont|Atelier velmont|Atelier bag|Velmont & Rook
  |Velmont & rook|Velmont & Leather|Velmont + Rook|Velmont · Rook|Satchel by Velmont|Satchel by velmont|Satchel by Leather
  |Satchel by Velmont Leather|By Velmont|Satchel von Velmont|Ab|Abc|A-b-c|O'V|Satchel St. Velmont|マルレンヌ・ルーク|マルレンヌ ルーク`;

it('what each title offers and names is as it is kept', async () => {
  const rows = (all: string, answer: (title: string) => string) =>
    all.split(/\s*\|/).map((title) => `${title}: ${answer(title)}`);
  const out = [...rows(titles, lot), ...rows(names, name)];
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/title-rows.txt');
});
