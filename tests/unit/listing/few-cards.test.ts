import { parseHTML } from 'linkedom';
import { expect, it } from 'vitest';
import { readListing } from '../../../src/listing';

const card = (number: number, title: string, price: string) =>
  `<a href="/i/${number}"><img src="/p/${number}/large.jpg" width="600" height="600" alt=""><b>${title}</b><i>${price}</i></a>`;
const page = (photo: string, more: string) =>
  `<!doctype html><html lang="en"><head><title>Carryall 30 | Shed</title></head><body><main><h1>Carryall 30</h1><img src="${photo}" width="900" height="900" alt=""><p>£195</p><p>A bag with a green lining, and the tab says KV0915. Comes from a home without smoke.</p><button>Message</button></main>${more}</body></html>`;
const read = (html: string) =>
  readListing(parseHTML(html).document as unknown as Document, {
    url: 'https://shed.example/i/9',
    now: '2026-03-01T12:00:00Z',
  });

it.each([
  ['one', card(1, 'Belt', '£5')],
  ['two', `<div>${card(1, 'Belt', '£5')}${card(2, 'Scarf', '£40')}</div>`],
  ['two in a list', `<ul><li>${card(1, 'Belt', '£5')}</li><li>${card(2, 'Scarf', '£40')}</li></ul>`],
])('links with a picture and a price are cards of others, however few: %s', async (_, more) => {
  const { price, photos } = await read(page('/p/9/large.jpg', more));
  expect(price.map(({ value }) => value.minor)).toEqual([19500]);
  expect(photos.map(({ url }) => url)).toEqual(['https://shed.example/p/9/large.jpg']);
});

it('words of a title in an address are no icon’s, a folder of icons is', async () => {
  const photosAt = async (photo: string) => (await read(page(photo, ''))).photos.length;
  expect(await photosAt('/p/bag-with-star-button/1.jpg')).toBe(1);
  expect(await photosAt('/p/emoji-lover-sale/1.jpg')).toBe(1);
  expect(await photosAt('/emojis/1.jpg')).toBe(0);
  expect(await photosAt('/icons/1.jpg')).toBe(0);
});
