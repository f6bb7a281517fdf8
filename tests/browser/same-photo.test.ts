import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { packing } from '../../src/store/packing';
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
    await panel.locator('p[data-stage=done]', { hasText: /^Page and 1 photo read/ }).waitFor({ timeout: 120_000 });
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

/** A file of the list with one of its cases as a case of its own that was kept before likenesses were. */
async function asKeptBefore(text: string, title: string, as: string): Promise<string> {
  const { records, looks, ...file } = JSON.parse(text);
  const record = records.find((one: { title: string }) => one.title === title);
  const [name] = record.looks;
  const { look } = looks.find(({ hash }: { hash: string }) => hash === name.look);
  const url = `${look.listing.url}?before`;
  for (const read of look.photos)
    read.observations = read.observations.filter(({ what }: { what: string }) => what !== 'likeness');
  look.listing.url = url;
  const hash = await packing.digest(JSON.stringify(look));
  const older = { ...record, id: 'older', title: as, shown: { ...record.shown, address: url } };
  const named = { ...older, looks: [{ ...name, look: hash }] };
  return JSON.stringify({ ...file, records: [named], looks: [{ hash, look }] });
}

it('a case that was kept before likenesses were is found by the small picture that was kept of its photo', async () => {
  const list = await browser.context.newPage();
  await list.goto(browser.extensionUrl('watchlist.html'));
  const [download] = await Promise.all([
    list.waitForEvent('download'),
    list.getByRole('button', { name: 'Export as a file' }).click(),
  ]);
  const file = await asKeptBefore(readFileSync(await download.path(), 'utf8'), 'Tote of the north', 'Older tote');
  await list
    .locator('input[type=file]')
    .setInputFiles({ name: 'older.json', mimeType: 'application/json', buffer: Buffer.from(file) });
  await list.getByText('1 added, 0 the same as here.').waitFor();
  // Likenesses are worked out when the list is opened, after its rows stand.
  await list.reload();
  const same = list.getByRole('region', { name: 'The same photo in other kept cases' });
  const found = async () => {
    await list.goto(browser.extensionUrl('watchlist.html'));
    await list.getByRole('link', { name: 'Tan bag' }).click();
    await same.waitFor();
    return same.textContent();
  };
  await expect.poll(found, { timeout: 30_000 }).toContain('Older tote');
}, 120_000);
