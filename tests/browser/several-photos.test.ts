import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { listingPage } from '../market/listing-page';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';

let shop: Market;
let photos: Market;
let browser: Browser;
beforeAll(async () => {
  [shop, photos] = await Promise.all([startMarket(), startMarket()]);
  browser = await launch({ window: { width: 1100, height: 800 } });
});
afterAll(async () => {
  await browser?.close();
  await Promise.all([shop?.close(), photos?.close()]);
});

/** A listing of these photos, its pictures one below the other. */
const listing = (urls: readonly string[]) =>
  listingPage(urls, urls.map((url) => `<p><img src="${url}" alt="" width="640" height="480"></p>`).join(''));

/** The pixel in the middle of each thumbnail. */
const middles = `Promise.all([...document.querySelectorAll('.photo-strip img')].map(async (photo) => {
  await photo.decode();
  const canvas = new OffscreenCanvas(photo.naturalWidth, photo.naturalHeight);
  canvas.getContext('2d').drawImage(photo, 0, 0);
  return [...canvas.getContext('2d').getImageData(photo.naturalWidth / 2, photo.naturalHeight / 2, 1, 1).data].slice(0, 3);
}))`;

it('several photos that can only be pictured on the page are each their own picture', async () => {
  const colours = ['#7a3b23', '#1f6242', '#1a5fb4', '#7d4b00', '#9b1c2c', '#4a5561'];
  const urls = await Promise.all(
    colours.map(async (background, index) => {
      const body = await sharp({ create: { width: 640, height: 480, channels: 3, background } })
        .png()
        .toBuffer();
      photos.make(`far-${index}.png`, { type: 'image/png', body });
      return `${photos.url}far-${index}.png`;
    }),
  );
  shop.make('far.html', listing(urls));
  const { page, tabId } = await openTab(browser, `${shop.url}far.html`);
  const panel = await openSidePanel(browser, page, tabId);
  await panel.untilRead();
  const seen = await panel.evaluate<number[][]>(middles);
  expect(seen.length).toBe(colours.length);
  for (const [index, colour] of colours.entries()) {
    const expected = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
    const farthest = Math.max(...expected.map((value, channel) => Math.abs(value - (seen[index]?.[channel] ?? 0))));
    // Its own colour, give or take what JPEG changes.
    expect(farthest, `photo ${index + 1} shows ${seen[index]}`).toBeLessThan(12);
  }
  await panel.close();
  await page.close();
});

it('of twelve photos three never answer: the others are read, the stamp among them, and it is said', async () => {
  const folder = new URL('../market/site/photos/', import.meta.url);
  const names = ['l1-front', 'l1-back', 'l1-base', 'l1-handle', 'l1-hardware', 'l1-lining', 'l2-back', 'l2-front'];
  // Tiny ones, but for the stamp: all have to be read before those that never answer are given up, after some 20 seconds.
  const shown = await Promise.all(
    [...names, 'l1-stamp'].map(async (name, index) => {
      const file = fileURLToPath(new URL(`${name}.jpg`, folder));
      const body = name === 'l1-stamp' ? readFileSync(file) : await sharp(file).resize(80).jpeg().toBuffer();
      shop.make(`p/${index}.jpg`, { type: 'image/jpeg', body });
      return `${shop.url}p/${index}.jpg`;
    }),
  );
  const silent = [0, 1, 2].map((index) => {
    shop.make(`silent/${index}.jpg`, 'never');
    return `${shop.url}silent/${index}.jpg`;
  });
  const order = [silent[0], ...shown.slice(0, 4), silent[1], ...shown.slice(4), silent[2]].map(String);
  const { body, type } = listing(order);
  // The pictures that never come would hold the page's own loading.
  shop.make('twelve.html', { type, body: body.replace(/<p><img.*<\/p>/s, '') });
  const { page, tabId } = await openTab(browser, `${shop.url}twelve.html`);
  const panel = await openSidePanel(browser, page, tabId);
  await panel.untilRead();
  const words = `document.querySelector('.progress-line').textContent`;
  expect(await panel.evaluate(words)).toBe('Page read, and 9 of 12 photos. 3 did not answer so far.');
  expect(await panel.codes()).toEqual(['KV0915']);
  await panel.until(`${words} === 'Page read, and 9 of 12 photos.'`);
  await panel.unfold();
  const why = 'Photos 1, 6, 12: The page did not bring the photo in time';
  await panel.until(`document.querySelector('.not-read').innerText.includes('${why}')`);
  await panel.close();
  await page.close();
});
