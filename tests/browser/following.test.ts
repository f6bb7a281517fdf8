import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { fourFields } from './far-photos';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch({ hosts: ['http://127.0.0.1/*'] });
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

describe('a panel that the browser’s own menu opened', () => {
  it('follows the tab in front, and finds what was read when the user comes back', async () => {
    const { page: first } = await openTab(browser, `${market.url}ondrasse-carryall-30-1995.html`);
    const panel = await browser.context.newPage();
    await first.bringToFront();
    await panel.goto(browser.extensionUrl('sidepanel.html'));
    // A tab that shows the panel is a tab too: the listing's is brought to the front as the user would.
    await panel.bringToFront();
    await first.bringToFront();
    const title = panel.locator('.listing-title');
    await expect.poll(() => title.textContent(), { timeout: 30_000 }).toContain('Carryall 30');
    await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 120_000 });
    const asked = market.asked.length;

    const { page: second } = await openTab(browser, `${market.url}calderwick-and-rook-ledger-32.html`);
    await expect.poll(() => title.textContent(), { timeout: 30_000 }).toContain('Ledger 32');
    const beside = await panel.locator('body').textContent();
    expect(beside).not.toContain('Carryall 30');

    await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 120_000 });
    const read = market.asked.length;
    expect(read).toBeGreaterThan(asked);
    await first.bringToFront();
    await expect.poll(() => title.textContent()).toContain('Carryall 30');
    expect(await panel.locator('[data-stage=done]').count()).toBe(1);
    // Nothing was fetched a second time for it.
    expect(market.asked.length).toBe(read);
    await second.close();
    await panel.close();
    await first.close();
  });
});

describe('a tab that shows no page', () => {
  it.each([
    ['a picture by itself', 'alone.png', 'image/png', 'This tab shows a photo by itself.'],
    ['a PDF document', 'alone.pdf', 'application/pdf', 'his tab shows a PDF document'],
  ])('is said to: %s', async (_name, path, type, words) => {
    market.make(path, { type, body: path.endsWith('png') ? await fourFields(300, 200) : smallestPdf });
    const { page, tabId } = await openTab(browser, market.url + path);
    const panel = await openSidePanel(browser, page, tabId);
    await panel.until(`document.querySelector('[data-stage=done], [role=alert]')`);
    const said = await panel.text();
    expect(said).toContain(words);
    expect(said).not.toContain('No listing was found');
    await panel.close();
    await page.close();
  });
});

/** One empty page. */
const smallestPdf = `%PDF-1.4
1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj
2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj
3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 200 200]>>endobj
trailer<</Root 1 0 R>>
%%EOF`;
