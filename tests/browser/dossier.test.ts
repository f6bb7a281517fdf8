import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';

/** A listing without photos whose code and year exclude each other. */
const listing = `<!doctype html><html lang="en"><head><title>Carryall</title></head><body><main>
<div itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">Ondrasse Carryall 30</h1>
<span itemprop="brand">Ondrasse</span>
<div itemprop="offers" itemscope itemtype="https://schema.org/Offer"><span itemprop="price" content="540.00">€540.00</span>
<meta itemprop="priceCurrency" content="EUR"></div>
<p itemprop="description">Made in 1987, made in Belgium. Date code KV0978.</p></div></main></body></html>`;

/** The reader takes markup out of what a page says; what the buyer pastes is kept as it is. */
const note = 'pasted from a mail: </style><script>globalThis.ran = true</script>';

let market: Market;
let browser: Browser;
let list: Page;
beforeAll(async () => {
  market = await startMarket();
  market.make('piece.html', { type: 'text/html', body: listing });
  browser = await launch();
  const { page, tabId } = await openTab(browser, `${market.url}piece.html`);
  const panel = await openSidePanel(browser, page, tabId);
  await panel.untilRead();
  await panel.click('Keep');
  await panel.until(`document.querySelector('.save-bar').innerText.includes('Kept.')`);
  await panel.close();
  await page.close();
  list = await browser.context.newPage();
  await list.goto(browser.extensionUrl('watchlist.html'));
  await list.locator('.case-row').getByRole('link', { name: 'Ondrasse Carryall 30' }).click();
  const opened = list.locator('.case-page');
  await opened.getByRole('textbox', { name: 'Note' }).fill(note);
  await opened.getByRole('button', { name: 'Save note' }).click();
  await opened.getByText('Note saved.').waitFor();
  await opened.getByRole('link', { name: 'Dossier' }).click();
  await list.locator('.dossier').waitFor();
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/** The finding that sets the year of the listing against the code. */
const against = '.finding[data-check=code-against-claimed-date]';

describe('the dossier of a saved case', () => {
  it('is in the address, and shows the finding in full and the time axis with its table', async () => {
    expect(list.url()).toContain('#dossier=');
    await list.reload();
    await list.locator('.dossier').waitFor();
    expect(await list.locator('h1').textContent()).toBe('Ondrasse Carryall 30');
    expect(await list.locator('.dossier-note').textContent()).toBe(note);
    const finding = await list.locator(against).textContent();
    for (const words of ['1987', 'Rests on', 'Ordinary reason', 'Would clear it up', 'Source', 'How sure is this?'])
      expect(finding).toContain(words);
    expect(await list.getByRole('heading', { name: 'When it was made' }).count()).toBe(1);
    expect(await list.locator('.time-axis-table tbody tr').count()).toBeGreaterThan(1);
    expect(await list.locator('.dossier details').count()).toBe(0);
  });

  it('prints black on white without its buttons, also from a dark screen', async () => {
    await list.emulateMedia({ media: 'print', colorScheme: 'dark' });
    expect(await list.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    const colours = await list.evaluate(() => {
      const { color, backgroundColor } = getComputedStyle(document.body);
      return [color, backgroundColor];
    });
    expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    await list.emulateMedia({ media: null, colorScheme: null });
  });

  it('is saved as one file that says the same, with no script, and loads nothing', async () => {
    const [download] = await Promise.all([
      list.waitForEvent('download'),
      list.getByRole('button', { name: 'Save as file' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^dossier-ondrasse-carryall-30-.*\.html$/);
    const text = await readFile(await download.path(), 'utf8');
    expect(text).not.toMatch(/<script/i);
    const file = await browser.context.newPage();
    const asked: string[] = [];
    file.on('request', (request) => asked.push(request.url()));
    await file.setContent(text);
    expect(asked.filter((url) => !url.startsWith('data:'))).toEqual([]);
    expect(await file.evaluate(() => 'ran' in globalThis)).toBe(false);
    expect(await file.locator('.dossier-note').textContent()).toBe(note);
    expect(await file.locator('.dossier').textContent()).toBe(await list.locator('.dossier').textContent());
    expect(await file.locator(against).count()).toBe(1);
    expect(await file.locator('.time-axis-chart').count()).toBe(1);
    const strokeWidth = await file
      .locator('.time-axis-hard .time-axis-bar')
      .first()
      .evaluate((bar) => getComputedStyle(bar).strokeWidth);
    expect(strokeWidth).toBe('1.25px');
    await file.close();
  });

  it('leads back to the case, and says when a case is not there', async () => {
    await list.getByRole('link', { name: 'Back to the case' }).click();
    await list.locator('.case-page').getByRole('link', { name: 'Back to the list' }).waitFor();
    await list.goto(browser.extensionUrl('watchlist.html#dossier=none'));
    await list.getByText('This case is not in the watch list').waitFor();
  });
});
