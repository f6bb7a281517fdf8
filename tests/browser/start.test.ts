import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { overTheEdge, violations } from './axe';
import { give } from './give';
import { type Browser, launch, openPanel, openTab, startPageOf } from './launch';
import { clickToolbar } from './toolbar';

const stampPhoto = new URL('../market/site/photos/l2-stamp.jpg', import.meta.url);
const readMs = 300_000;

let market: Market;
let browser: Browser;
let start: Page;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch({ startPage: true });
  start = await startPageOf(browser.context);
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/** A part of the full page in a tab of its own. */
async function open(part: string): Promise<Page> {
  const page = await browser.context.newPage();
  await page.goto(browser.extensionUrl(`watchlist.html#${part}`));
  return page;
}

describe('the first minute', () => {
  it('a fresh install opens one page, which asks for nothing and says what the tool does and does not', async () => {
    const ours = browser.context.pages().filter((page) => page.url().startsWith(browser.extensionUrl('')));
    expect(ours.map((page) => page.url())).toEqual([browser.extensionUrl('watchlist.html#start')]);
    await start.getByText('It does not say who made a piece.').waitFor();
    await start.getByText('No shop is allowed yet.').waitFor();
    // A browser that a test starts sets no keys; what is said is what it has set.
    const keys = await start.evaluate(async () => (await chrome.commands.getAll())[0]?.shortcut);
    await start.getByText(keys ? `The keys ${keys} do the same.` : 'No keys are set for it.').waitFor();
    expect(await start.evaluate(async () => (await chrome.permissions.getAll()).origins)).toEqual([]);
    expect(await start.evaluate(async () => Object.keys(await chrome.storage.local.get(null)))).toEqual([]);
  });

  it('a code is read without any listing: by its form, and by a file that is here', async () => {
    await start.getByLabel('Type the code as you see it').fill('2496');
    await start.getByRole('button', { name: 'Decode' }).click();
    const answer = start.locator('.answer');
    await answer.getByText('The code that you typed reads 2496. None of your files explains it.').waitFor();
    expect(await answer.locator('.forms').textContent()).toContain('the week of 10 June 1996');
    expect(await answer.textContent()).not.toContain('listing');
    await start.getByLabel('Type the code as you see it').fill('KV0978');
    await start.getByRole('button', { name: 'Decode' }).click();
    await answer.getByText('KV0978').first().waitFor();
    expect(await answer.textContent()).not.toContain('Ondrasse');
    await start.getByLabel('Whose codes').selectOption({ label: 'Ondrasse (invented)' });
    await answer.getByText('The code that you typed reads July 1998, Belgium.').waitFor();
    expect(await answer.textContent()).toContain('by the Ondrasse file: invented, for the demonstration');
  });

  it.each([320, 400, 1280])('stands at %i px, light and dark, for everyone', async (width) => {
    await start.setViewportSize({ width, height: 900 });
    expect(await overTheEdge(start)).toEqual([]);
    for (const colorScheme of ['light', 'dark'] as const) {
      await start.emulateMedia({ colorScheme });
      expect(await violations(start)).toEqual([]);
    }
  });

  it('the demo listing is read like any other, says that it is invented, and is kept nowhere', async () => {
    await start.getByRole('link', { name: 'Open the demo listing' }).click();
    await start.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: readMs });
    expect(await start.locator('.answer h2').textContent()).toBe(
      'The stamp in photo 3 reads July 1998, Belgium. The listing says 1987.',
    );
    await start.getByText('by the Ondrasse file: invented, for the demonstration').waitFor();
    await start.getByText('Everything here is invented for the demonstration').waitFor();
    expect(await violations(start)).toEqual([]);
    await start.getByRole('link', { name: 'Watch list', exact: true }).click();
    await start.getByText('Nothing saved yet').waitFor();
  });
});

describe('a photo without a listing', () => {
  it('dropped on the first page is read by its form, and under a maker that is chosen', async () => {
    const page = await open('start');
    await page.getByText('Read a photo', { exact: true }).first().waitFor();
    await give(page, 'drop', 'stamp.jpg', 'image/jpeg', readFileSync(stampPhoto));
    await page.locator('.answer[data-answer=unexplained]').waitFor({ timeout: readMs });
    expect(await page.locator('.answer h2').textContent()).toBe(
      'The stamp in photo 1 reads KV0978. None of your files explains it.',
    );
    expect(page.url()).toContain('#photo');
    await page.getByLabel('Whose codes').selectOption({ label: 'Ondrasse (invented)' });
    await page.getByText('The stamp in photo 1 reads July 1998, Belgium.').waitFor();
    expect(await violations(page)).toEqual([]);
    await page.close();
  });

  it('pasted as a PDF is not read, and is told what to do instead', async () => {
    const page = await open('photo');
    await page.getByText('Choose a photo').waitFor();
    await give(page, 'paste', 'offer.pdf', 'application/pdf', Buffer.from(`%PDF-1.7\n${'x'.repeat(200)}`));
    await page.getByText('Photo 1: the photo is inside a PDF document, which is not read here.').waitFor();
    await page.getByText('take a screenshot of the stamp').waitFor();
    await page.close();
  });

  it('shown by a tab itself is read in the panel', async () => {
    const { page, tabId } = await openTab(browser, `${market.url}photos/l2-stamp.jpg`);
    await clickToolbar(browser, page);
    const panel = await openPanel(browser, tabId);
    await panel.getByRole('button', { name: 'Read this photo' }).click();
    await panel.getByText('The stamp in photo 1 reads KV0978.').waitFor({ timeout: readMs });
    expect(await violations(panel)).toEqual([]);
  });
});
