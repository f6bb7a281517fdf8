import { describe, expect, it } from 'vitest';
import { listingSchema } from '../../../src/listing/types';
import { readHtml } from './page';

const offer = (extra = '') => `
  <script type="application/ld+json">${JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: 'Ondrasse Carryall 30, 1995',
    brand: { '@type': 'Brand', name: 'Ondrasse' },
    description: 'Made in Belgium in 1995. 30 x 21 x 17 cm.',
    image: ['/photos/front.jpg', '/photos/stamp.jpg'],
    offers: {
      '@type': 'Offer',
      price: '540.00',
      priceCurrency: 'EUR',
      itemCondition: 'https://schema.org/UsedCondition',
      availability: 'https://schema.org/InStock',
      seller: { '@type': 'Person', name: 'harbour_attic' },
    },
  })}</script>${extra}`;

describe('reading one page into a listing', () => {
  it('reads title, price, maker, condition, seller and photos from JSON-LD', async () => {
    const listing = await readHtml(offer());
    expect(listingSchema.parse(listing)).toEqual(listing);
    expect(listing.kind).toBe('listing');
    expect(listing.title[0]?.value).toBe('Ondrasse Carryall 30, 1995');
    expect(listing.maker[0]?.value).toBe('Ondrasse');
    expect(listing.price[0]?.value).toEqual({
      kind: 'sale',
      minor: 54000,
      exponent: 2,
      currency: 'EUR',
      currencies: ['EUR'],
    });
    expect(listing.condition[0]?.value).toBe('used');
    expect(listing.availability[0]?.value).toBe('offered');
    expect(listing.seller.name[0]?.value).toBe('harbour_attic');
    expect(listing.photos.map((photo) => photo.url)).toEqual([
      'https://attic-arcade.example/photos/front.jpg',
      'https://attic-arcade.example/photos/stamp.jpg',
    ]);
    expect(listing.measures.map(({ value }) => value.mm)).toEqual([300, 210, 170]);
  });

  it('reads a page without any data from what it shows', async () => {
    const listing = await readHtml(`<main>
      <h1>Tessaro Vell Satchel 28</h1><p class="price">260,00 €</p>
      <img src="/p/1.jpg" width="800" height="600" alt="front">
      <dl><dt>Condition</dt><dd>Used, very good</dd><dt>Brand</dt><dd>Tessaro Vell</dd></dl>
      <h2>Description</h2><p>Vegetable tanned leather with a suede lining, bought new in 2011 and used with care.</p>
      <p>Seller: pelle_e_carta</p></main>`);
    expect(listing.kind).toBe('listing');
    expect(listing.title[0]?.value).toBe('Tessaro Vell Satchel 28');
    expect(listing.price[0]?.value.minor).toBe(26000);
    expect(listing.maker[0]).toMatchObject({ value: 'Tessaro Vell', origin: 'visible' });
    expect(listing.condition[0]?.value).toBe('used-very-good');
    expect(listing.description[0]?.value).toMatch(/^Vegetable tanned/);
    expect(listing.seller.name[0]?.value).toBe('pelle_e_carta');
    expect(listing.photos).toHaveLength(1);
  });

  it('says that a page of many pieces is a list, and that an empty page offers nothing', async () => {
    const card = (index: number) =>
      `<li><a href="/item/${index}"><img src="/t/${index}.jpg"><h3>Bag ${index}</h3></a><p>€ ${index}0</p></li>`;
    const list = await readHtml(`<main><h1>Bags</h1><ul>${[1, 2, 3, 4, 5, 6].map(card).join('')}</ul></main>`);
    expect(list.kind).toBe('list');
    expect(list.problems.map((problem) => problem.code)).toContain('page-is-a-list');
    const none = await readHtml('<p>Nothing here.</p>');
    expect(none.kind).toBe('none');
    expect(none.problems.map((problem) => problem.code)).toContain('no-listing');
  });

  it('keeps both prices and says so when data and page disagree', async () => {
    const listing = await readHtml(
      offer('<main><h1>Ondrasse Carryall 30, 1995</h1><p class="price">€ 590.00</p></main>'),
    );
    expect(listing.price.map(({ value }) => value.minor)).toEqual([54000, 59000]);
    expect(listing.problems.map((problem) => problem.code)).toContain('price-conflict');
  });
});
