import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { restOf } from '../../../src/claim/passage';
import type { Listing } from '../../../src/listing/types';
import { readHtml } from '../listing/page';
import { listingOf } from './listing-of';

const page = (seller: string, ...paragraphs: string[]) =>
  readHtml(
    `<main><h1>Ashgrove Frome 24</h1><p class="price">€310</p><section>${paragraphs.map((text) => `<p>${text}</p>`).join('')}</section>` +
      `<aside class="seller">Seller: <a href="/u/${seller}">${seller}</a> · Turin · 4.9 (128)</aside></main>`,
  );
const kinds = async (seller: string, ...paragraphs: string[]) =>
  findClaims(await page(seller, ...paragraphs), []).map(({ kind, words }) => `${kind} ${words}`);

it('what a description of several paragraphs says is claimed once', async () => {
  const claims = await kinds(
    'ann',
    'Bought in the shop in London in 2018, and worn since.',
    'Some scratches on the base of it.',
  );
  expect(claims.filter((claim) => claim.startsWith('wear'))).toEqual(['wear scratches']);
});

it('a seller’s name says nothing of the piece', async () => {
  const claims = await kinds('vintage_lab_torino', 'Bought in the shop in London in 2018, and worn since.');
  expect(claims.filter((claim) => claim.startsWith('age-word'))).toEqual([]);
});

/** What is left of a page's text, blanks where the rest was read elsewhere shown as dots. */
const left = (title: string, description: string, text: string, more: Partial<Listing> = {}) =>
  restOf(listingOf(title, description, 'en', { text, ...more }))?.text.replaceAll('\n', '·') ?? null;

it.each<[name: string, title: string, description: string, text: string, rest: string | null]>([
  ['the description and the title', 'Bag', 'Of fine calf.', 'Bag Of fine calf. Year', '··· ············· Year'],
  [
    'a description line by line',
    '',
    'Of fine calf leather\nand lined with suede',
    'Of fine calf leather; and lined with suede.',
    '····················; ····················.',
  ],
  [
    'lines of twelve characters, and no shorter ones',
    '',
    'abcdefghijkl\nabcdefghijk',
    'abcdefghijkl, abcdefghijk',
    '············, abcdefghijk',
  ],
  ['each once', 'Bag', 'Of calf.', 'Bag Of calf. Bag Of calf.', '··· ········ Bag Of calf.'],
  ['nothing for a title that is blank', ' ', 'Of calf.', 'a b Of calf.', 'a b ········'],
  ['all of it', 'Bag', 'Of calf.', 'Bag\nOf calf.\n', null],
  ['a page without a description', 'Bag', '', 'Bag Of calf.', null],
  ['a page whose description is blank', 'Bag', ' \n', 'Bag Of calf.', null],
])('beside what is read elsewhere: %s', (_, title, description, text, rest) => {
  expect(left(title, description, text)).toBe(rest);
});

it('names of the seller of four letters and more are blank as well, wherever they stand', () => {
  const seller = (value: string) => ({
    seller: { ...listingOf('', '').seller, name: [{ value, origin: 'visible' as const, where: 'a', confidence: 0.9 }] },
  });
  expect(left('', 'Of calf.', 'Of calf. anna, 1994, anna', seller('anna'))).toBe('········ ····, 1994, ····');
  expect(left('', 'Of calf.', 'Of calf. ann, 1994, ann', seller('ann'))).toBe('········ ann, 1994, ann');
  expect(left('', 'Of calf.', 'Of calf. ann , 1994', seller(' ann '))).toBe('········ ann , 1994');
});

it.each([
  'Superb, mine is from 2003, in green. Good luck!',
  'Superbe, la mienne est de 2003, en vert. Bonne vente !',
  'Sehr schön, meine ist von 2003, in Grün.',
  'Bellissima, la mia è del 2003, verde.',
  'Preciosa, la mía es de 2003, en verde.',
  'Mooi, de mijne is uit 2003, in groen.',
])('who compares with a piece of their own is not the seller, whatever they are called: %s', async (comment) => {
  const html = (text: string) =>
    `<main><h1>Ashgrove Frome 24</h1><div class="post"><a class="seller-name" href="/m/12">tarn</a><p class="price">€310</p><div class="description"><p>A black calf bag with a brass zip, bought in Turin in 2014 and worn to work since then.</p></div></div><div class="post"><b>lanière</b><p>${text}</p></div></main>`;
  const dates = async (text: string) =>
    findClaims(await readHtml(html(text)), []).flatMap((claim) => (claim.kind === 'made' ? [claim.span.from] : []));
  expect(await dates(comment)).toEqual([]);
  expect(await dates('Made in 2003.')).toEqual(['2003-01-01']);
});
