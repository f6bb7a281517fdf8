import { describe, expect, it } from 'vitest';
import { readHtml } from './page';

const page = `<main><h1>Tessaro Vell Satchel 28</h1><p class="price">€900.00</p><div class="box"><span class="ask-4711">€260.00</span></div>
  <div class="extra"><img src="/p/stamp.jpg" alt="stamp"></div></main>`;

describe("the user's pick", () => {
  it('stands above everything else, and is shown as the pick that it is', async () => {
    const listing = await readHtml(page, { picks: [{ field: 'price', selector: '.box > span' }] });
    expect(listing.price[0]).toMatchObject({
      origin: 'user-pick',
      confidence: 1,
      value: { minor: 26000 },
      where: '.box > span',
    });
    const undone = await readHtml(page, { picks: [] });
    expect(undone.price[0]).toMatchObject({ origin: 'visible', value: { minor: 90000 } });
  });

  it('puts a picked photo first', async () => {
    const listing = await readHtml(`<img src="/p/front.jpg">${page}`, {
      picks: [{ field: 'photo', selector: '.extra img' }],
    });
    expect(listing.photos[0]).toMatchObject({
      url: 'https://attic-arcade.example/p/stamp.jpg',
      origins: ['user-pick', 'visible'],
    });
  });

  it('says when the place is not on the page, or holds something else', async () => {
    const listing = await readHtml(page, {
      picks: [
        { field: 'price', selector: '.elsewhere' },
        { field: 'price', selector: 'h1' },
      ],
    });
    expect(listing.problems.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['pick-not-found', 'pick-unreadable']),
    );
    expect(listing.price[0]?.value.minor).toBe(90000);
  });

  it('makes a listing of a page that would be none, when the user points at its title and price', async () => {
    const bare = '<div><b id="t">An old bag</b><i id="p">45 EUR</i></div>';
    expect((await readHtml(bare)).title).toEqual([]);
    const listing = await readHtml(bare, {
      picks: [
        { field: 'title', selector: '#t' },
        { field: 'price', selector: '#p' },
      ],
    });
    expect(listing.kind).toBe('listing');
    expect(listing.title[0]).toMatchObject({ value: 'An old bag', origin: 'user-pick' });
    expect(listing.price[0]).toMatchObject({ value: { minor: 4500, currency: 'EUR' }, origin: 'user-pick' });
  });
});
