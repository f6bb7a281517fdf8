import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
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

describe('photos of another host that lets no script fetch them', () => {
  it('are taken from the visible tab, and the page stands where it stood', async () => {
    const photo = await sharp({ create: { width: 640, height: 480, channels: 3, background: '#7a3b23' } })
      .png()
      .toBuffer();
    photos.make('far.png', { type: 'image/png', body: photo });
    const url = `${photos.url}far.png`;
    shop.make('far.html', {
      type: 'text/html',
      body: `<!doctype html><html lang="en"><head><title>Bag</title><script type="application/ld+json">
        {"@context":"https://schema.org","@type":"Product","name":"Ondrasse Carryall 30","brand":"Ondrasse","image":"${url}",
        "offers":{"@type":"Offer","price":"540","priceCurrency":"EUR"}}</script><link rel="stylesheet" href="far.css">
        </head><body><main><h1>Ondrasse Carryall 30</h1><p>€540</p><div class="tall"></div><img src="${url}" alt=""></main></body></html>`,
    });
    shop.make('far.css', { type: 'text/css', body: '.tall { height: 3000px }' });
    const { page, tabId } = await openTab(browser, `${shop.url}far.html`);
    const panel = await openSidePanel(browser, page, tabId);
    await panel.untilRead();
    expect(await panel.evaluate(`document.querySelector('.progress-line').textContent`)).toBe(
      'Page and 1 photo read, from a copy on the page.',
    );
    const middle = await panel.evaluate<number[]>(`(async () => {
      const photo = document.querySelector('.photo-strip img');
      await photo.decode();
      const canvas = new OffscreenCanvas(photo.naturalWidth, photo.naturalHeight);
      canvas.getContext('2d').drawImage(photo, 0, 0);
      return [...canvas.getContext('2d').getImageData(photo.naturalWidth / 2, photo.naturalHeight / 2, 1, 1).data];
    })()`);
    // The photo's own brown, give or take what JPEG changes: not the page around it.
    for (const [channel, expected] of [122, 59, 35].entries()) {
      expect(Math.abs((middle[channel] ?? 0) - expected)).toBeLessThan(12);
    }
    expect(await page.evaluate(() => scrollY)).toBe(0);
    await panel.close();
    await page.close();
  });
});
