import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { readHtml } from '../listing/page';

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
