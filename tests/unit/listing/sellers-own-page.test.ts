import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { priceWords } from '../../hostile/expectation';
import { shortClaim } from '../claim/listing-of';
import { readHtml } from './page';

const read = async (body: string, lang = 'en', head = '') =>
  readHtml(`<!doctype html><html lang="${lang}"><head><title>Bag</title>${head}</head><body>${body}</body></html>`);
const pricesOf = ({ price }: Awaited<ReturnType<typeof read>>) => price.map(({ value }) => priceWords(value));
const prose = '<div><p>I carried it for ten years and it was with me in four countries, now it is too small.</p></div>';

describe('a sum that stands in the seller’s sentence alone', () => {
  const text = '<h1>Ashgrove Frome 24</h1><img src="/p/1.jpg" width="900" height="900">';
  it.each([
    ['en', 'Selling my bag, lined in twill, a few marks on the base. £85 posted to you.'],
    ['fr', 'vends sac en bon état, doublure kaki, quelques marques côté gauche. 85 € fdp in.'],
    ['nl', 'Te koop, tas van mijn tante, krassen op de achterkant. Vraagprijs 85 euro.'],
  ])('offers the piece (%s)', async (lang, said) => {
    const listing = await read(`${text}<div><p>${said}</p></div>`, lang);
    expect(listing.kind).toBe('listing');
    expect(pricesOf(listing)).toEqual([lang === 'en' ? 'sale GBP 85.00' : 'sale EUR 85.00']);
  });

  it.each([
    ['without a word of selling', '<p>We saw a bag for £85 at the fair, and walked on for a long while.</p>', ''],
    ['with another', '<p>I am selling what I paid £85 for, and my sister got £120 for hers last year.</p>', ''],
    [
      'in an article',
      '<p>Selling a bag for £85 is no feat, as everybody in this street will tell you today.</p>',
      '<meta property="og:type" content="article">',
    ],
  ])('%s offers nothing', async (_, said, head) => {
    expect((await read(text + said, 'en', head)).kind).not.toBe('listing');
  });
});

describe('prices that are none of the piece', () => {
  it.each([
    ['en', '£3.50 per tin', '£21.00'],
    ['de', '3,50 € pro Dose', '21,00 €'],
    ['es', '3,50 € por lata', '21,00 €'],
    ['nl', '€ 3,50 per blik', '€ 21,00'],
  ])('of one of several (%s: %s)', async (lang, each, sum) => {
    const [best] = pricesOf(
      await read(`<h1>Balm</h1><p>${each}</p><p>${sum}</p>${prose}<button>Buy now</button>`, lang),
    );
    expect(best).toMatch(/^sale \w{3} 21\.00$/);
  });
});

it('what the seller answers among the questions of others is claimed, and what they ask is not', async () => {
  const listing = await read(
    `<h1>Ashgrove Frome 24</h1><p class="price">£85</p><h2>Description</h2>${prose}
     <section><h2>Questions</h2><p>ann: was it made in Spain in 1999?</p><p>Seller: it says made in Portugal</p></section>`,
  );
  const claims = findClaims(listing, []).map(shortClaim);
  expect(claims).toContain('origin PT');
  expect(claims.filter((one) => /ES|1999/.test(one))).toEqual([]);
});

it.each([
  ['Old Leather Ltd.', 'trader'],
  ['Piel Vieja S.L.', 'trader'],
  ['株式会社古革', 'trader'],
  ['limited_edition', undefined],
  ['kg_anna', undefined],
])('a seller called %s is a %s', async (name, trader) => {
  const { seller } = await read(`<h1>Ashgrove Frome 24</h1><p>£85</p>${prose}<p>Seller: <b>${name}</b></p>`);
  expect([seller.name[0]?.value, seller.trader[0]?.value]).toEqual([name, trader]);
});

describe('a link whose class says that it is the seller’s', () => {
  const seller = async (link: string) =>
    (
      await read(
        `<h1>Ashgrove Frome 24</h1><img src="/p/1.jpg" width="900" height="900"><article><header>${link}</header></article><p class="price">£85</p>${prose}`,
      )
    ).seller.name.map(({ value }) => value);
  it('names who sells, wherever it leads', async () => {
    expect(await seller('<a class="seller" href="/m/x">tarn_otter</a>')).toEqual(['tarn_otter']);
    expect(await seller('<a class="vendor" href="#">birk77</a>')).toEqual(['birk77']);
  });
  it('asks something of the reader where it is several words', async () => {
    expect(await seller('<a class="seller" href="/ask">Ask the seller</a>')).toEqual([]);
    expect(await seller('<div class="comments"><a class="seller" href="/m/x">tarn_otter</a></div>')).toEqual([]);
  });
});
