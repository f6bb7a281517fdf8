import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar, openSidePanel } from './toolbar';

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

const pageWith = (photos: string[]) => `<!doctype html><html lang="en"><head><title>Satchel</title>
<script type="application/ld+json">${JSON.stringify({
  '@context': 'https://schema.org',
  '@type': 'Product',
  name: 'Tessaro Vell Satchel 28',
  image: photos,
  offers: { '@type': 'Offer', price: '260', priceCurrency: 'EUR' },
})}</script></head><body><main><h1>Tessaro Vell Satchel 28</h1><p>€260</p>
${photos.map((src) => `<img src="${src}" width="400" height="300" alt="">`).join('')}</main></body></html>`;

const flat = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#7a3b23' } });

describe('photos that cannot be read', () => {
  it('are named with the reason, and the rest goes on', async () => {
    const good = await flat(400, 300).jpeg().toBuffer();
    market.make('bad/good.jpg', { type: 'image/jpeg', body: good });
    market.make('bad/page.jpg', { type: 'image/jpeg', body: '<!doctype html><title>Sign in</title>' });
    market.make('bad/dot.png', { type: 'image/png', body: await flat(1, 1).png().toBuffer() });
    market.make('bad/huge.png', { type: 'image/png', body: await flat(8000, 5000).png().toBuffer() });
    market.make('bad/bomb.png', { type: 'image/png', body: await flat(16000, 16000).png().toBuffer() });
    market.make('bad/cut.jpg', { type: 'image/jpeg', body: good.subarray(0, 60) });
    market.make('bad/drawing.jpg', {
      type: 'image/svg+xml',
      body: '<svg xmlns="http://www.w3.org/2000/svg" width="90" height="90"/>',
    });
    market.make('bad/never.jpg', 'never');
    const names = ['good.jpg', 'page.jpg', 'dot.png', 'huge.png', 'bomb.png', 'cut.jpg', 'drawing.jpg', 'gone.jpg'];
    market.make('bad.html', { type: 'text/html', body: pageWith(names.map((name) => `/bad/${name}`)) });
    const { page, tabId } = await openTab(browser, `${market.url}bad.html`);
    const panel = await openSidePanel(browser, page, tabId);
    await panel.untilRead();
    await panel.unfold();
    const told = await panel.evaluate<string>(`document.querySelector('.not-read').innerText`);
    expect(told).toMatch(/\d of \d+ photos not read/);
    expect(told).toContain('not an image that can be read');
    expect(told).toMatch(/1 × 1 pixels/);
    expect(told).toContain('16000 × 16000 pixels');
    expect(told).toContain('ends before it says how large it is');
    expect(told).toContain('answered 404');
    expect(told).toContain('as a drawing (SVG), not as a photograph. If it shows the stamp, type the code by hand');
    // The good one and the 40-megapixel one were read.
    expect(await panel.evaluate(`document.querySelectorAll('.photo-strip img').length`)).toBe(2);
    await panel.close();
    await page.close();
  });

  it('do not hold up the others when one never arrives', async () => {
    const good = await flat(400, 300).jpeg().toBuffer();
    market.make('slow/good.jpg', { type: 'image/jpeg', body: good });
    market.make('slow/never.jpg', 'never');
    const body = pageWith(['/slow/never.jpg', '/slow/good.jpg']);
    market.make('slow.html', { type: 'text/html', body });
    const worker = await browser.worker();
    const arrives = browser.context.waitForEvent('page');
    const url = `${market.url}slow.html`;
    const tabId = await worker.evaluate(
      async (address) => (await chrome.tabs.create({ url: address })).id as number,
      url,
    );
    const page = await arrives;
    await page.getByRole('heading', { name: 'Tessaro Vell Satchel 28' }).waitFor();
    const panel = await openSidePanel(browser, page, tabId);
    await panel.untilRead();
    // The reading is done before its time is over; it is told as not read once it is.
    await panel.until(`document.querySelector('.not-read')?.textContent.includes('1 of 2 photos not read')`, 90_000);
    await panel.close();
    await page.close();
  });
});

describe('pages that offer no piece', () => {
  it.each([
    ['index.html', 'This page shows many pieces.'],
    ['help.html', 'No listing was found on this page.'],
  ])('%s: %s', async (path, words) => {
    const { page, tabId } = await openTab(browser, market.url + path);
    const panel = await openSidePanel(browser, page, tabId);
    await panel.until(`document.body.innerText.includes(${JSON.stringify(words)})`);
    await panel.close();
    await page.close();
  });
});

describe('the right to read a tab', () => {
  it('is missing without a click, given by it, and said to have ended on another site', async () => {
    market.make('plain.html', { type: 'text/html', body: pageWith([]) });
    const { page, tabId } = await openTab(browser, `${market.url}plain.html`);
    const panel = await openPanel(browser, tabId);
    await panel.getByRole('alert').getByText('Click the Tellstamp button').waitFor();

    await clickToolbar(browser, page);
    await panel.locator('.listing-title').getByText('Tessaro Vell Satchel 28').waitFor();

    // localhost is another site than 127.0.0.1, on the same server.
    await page.goto(`${market.url.replace('127.0.0.1', 'localhost')}plain.html`);
    await panel.getByRole('alert').getByText('The tab shows another page now').waitFor();
    expect(await panel.locator('.listing-title').textContent()).toBe('Tessaro Vell Satchel 28');

    await clickToolbar(browser, page);
    await panel.getByText('The tab shows another page now').waitFor({ state: 'detached' });
    await panel.close();
    await page.close();
  });

  it('ends quietly on a page of the browser itself', async () => {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('watchlist.html'));
    const tabId = await page.evaluate(async () => (await chrome.tabs.getCurrent())?.id as number);
    const panel = await openPanel(browser, tabId);
    await panel.getByRole('alert').waitFor();
    expect(await panel.getByRole('alert').textContent()).not.toMatch(/error|undefined/i);
    await panel.close();
    await page.close();
  });
});

describe('a code typed by hand', () => {
  it('is decoded like a read one, and a text of 10,000 characters is refused in words', async () => {
    market.make('typed.html', {
      type: 'text/html',
      body: pageWith([]).replaceAll('Tessaro Vell Satchel 28', 'Ondrasse Carryall 30'),
    });
    const { page, tabId } = await openTab(browser, `${market.url}typed.html`);
    await clickToolbar(browser, page);
    const panel = await openPanel(browser, tabId);
    const field = panel.getByLabel('Type the code as you see it');
    await field.fill('KV0915');
    await panel.getByRole('button', { name: 'Decode' }).click();
    await panel.getByText('January 1995').first().waitFor();
    await field.fill('7'.repeat(10_000));
    await panel.getByText('That is no stamp').waitFor();
    expect(await panel.getByRole('button', { name: 'Decode' }).isDisabled()).toBe(true);
    await panel.getByRole('button', { name: 'Remove KV0915' }).click();
    expect(await panel.locator('.stamp-text').count()).toBe(0);
    await panel.close();
    await page.close();
  });
});
