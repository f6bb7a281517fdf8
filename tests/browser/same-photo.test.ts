import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { overTheEdge, violations } from './axe';
import { type Browser, launch, openPanel, openTab } from './launch';

const photo = (name: string) => readFileSync(new URL(`../market/site/photos/${name}.jpg`, import.meta.url));
const page = (title: string, picture: string, seller: string) => ({
  type: 'text/html',
  body: `<!doctype html><html lang="en"><head><title>${title}</title></head><body><main><h1>${title}</h1><p class="price">€390.00</p>
<p>A tan leather bag that my sister bought in Ghent and hardly ever wore.</p><img src="/${picture}" width="500" alt="front">
<p>Sold by ${seller}</p><button>Buy now</button></main></body></html>`,
});

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  const front = photo('l1-front');
  const mirrored = await sharp(front).flop().resize(500).jpeg({ quality: 60 }).toBuffer();
  const pictures = { 'front.jpg': front, 'mirrored.jpg': mirrored, 'other.jpg': photo('l2-front') };
  for (const [name, body] of Object.entries(pictures)) market.make(name, { type: 'image/jpeg', body });
  market.make('first.html', page('Tote of the north', 'front.jpg', 'north_bags'));
  market.make('second.html', page('Another tote', 'other.jpg', 'hill_bags'));
  market.make('third.html', page('Tan bag', 'mirrored.jpg', 'harbour_finds'));
  browser = await launch({ hosts: ['http://127.0.0.1/*'] });
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

it('a kept case shows the other kept listing that has its photo, and none that has another', async () => {
  for (const name of ['first', 'second', 'third']) {
    const { tabId } = await openTab(browser, `${market.url}${name}.html`);
    const panel = await openPanel(browser, tabId);
    await panel.getByText(/^Page and 1 photo read/).waitFor({ timeout: 120_000 });
    await panel.getByRole('button', { name: 'Keep', exact: true }).click();
    await panel.getByText('Kept.').waitFor();
    await panel.close();
  }
  const list = await browser.context.newPage();
  await list.goto(browser.extensionUrl('watchlist.html'));
  await list.getByRole('link', { name: 'Tan bag' }).click();
  const same = list.getByRole('region', { name: 'The same photo in other kept cases' });
  await same.getByRole('link', { name: 'Tote of the north' }).waitFor();
  const words = await same.textContent();
  expect(words).toContain('One is the mirror image of the other.');
  expect(words).toContain('Ordinary reason:');
  expect(words).not.toContain('Another tote');
  await expect.poll(() => same.locator('img').count()).toBe(2);
  expect(await violations(list)).toEqual([]);
  for (const width of [320, 400, 600, 1280]) {
    await list.setViewportSize({ width, height: 900 });
    expect(await overTheEdge(list)).toEqual([]);
  }
}, 240_000);
