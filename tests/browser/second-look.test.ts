import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';

/** A listing without photos: what is tested here is what is said of it. */
const listing = (title: string, price: string, words: string) => ({
  type: 'text/html',
  body: `<!doctype html><html lang="en"><head><title>Bag</title><script type="application/ld+json">${JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: title,
    brand: 'Ondrasse',
    description: words,
    offers: { '@type': 'Offer', price, priceCurrency: 'EUR', seller: { '@type': 'Person', name: 'mina_k' } },
  })}</script></head><body><main><h1>${title}</h1><p>€${price}</p><p>${words}</p></main></body></html>`,
});

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

it('a second look at a saved listing says first what has changed, and saving it makes it the look to compare with', async () => {
  market.make('piece.html', listing('Ondrasse Carryall 30', '540.00', 'Made in 1995. Light wear. Date code KV0915.'));
  const { page, tabId } = await openTab(browser, `${market.url}piece.html`);
  const first = await openSidePanel(browser, page, tabId);
  await first.untilRead();
  expect(await first.evaluate(`document.querySelector('.changes, .changes-none')`)).toBeNull();
  await first.click('Keep');
  await first.until(`document.querySelector('.save-bar').innerText.includes('Kept.')`);
  await first.close();
  await page.close();

  market.make('piece.html', listing('Ondrasse Carryall 30', '525.00', 'Made in 1996. Light wear. Date code KV0915.'));
  const { page: later, tabId: laterId } = await openTab(browser, `${market.url}piece.html`);
  const second = await openSidePanel(browser, later, laterId);
  await second.untilRead();
  expect(await second.evaluate(`document.querySelector('.case-answer').firstElementChild.className`)).toBe('changes');
  const said = await second.evaluate<string[]>(
    `[...document.querySelectorAll('.changes > ul > li')].map((one) => one.innerText)`,
  );
  expect(said[0]).toBe('The price was 540.00 EUR; now it is 525.00 EUR, 3% less.');
  expect(said.join('\n')).toContain('Made: was 1995; now 1996.');
  expect(said.join('\n')).toMatch(/description was changed[\s\S]*Made in 1995[\s\S]*Made in 1996/);
  await second.until(`document.querySelector('.save-bar').innerText.includes('differs from what is read now')`);

  await second.click('Keep this look too');
  await second.until(`document.querySelector('.save-bar').innerText.includes('Kept.')`);
  await second.click('Read again');
  await second.until(`document.querySelector('.changes-none')?.innerText.startsWith('Nothing has changed')`);
  await second.close();
  await later.close();
});
