import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { overTheEdge, violations } from './axe';
import { give } from './give';
import { type Browser, launch, openPanel, openTab } from './launch';

const stampPhoto = new URL('../market/site/photos/l2-stamp.jpg', import.meta.url);
const patienceMs = 300_000;
const fileOn = (code: string) =>
  JSON.stringify({ format: 2, maker: 'Velmar Lane', plants: [{ code, place: 'PT', used: ['1980', null] }] });

let market: Market;
let browser: Browser;
let panel: Page;
beforeAll(async () => {
  market = await startMarket();
  market.make('bare.html', { type: 'text/html', body: '<!doctype html><title>Words</title><p>Only words.</p>' });
  browser = await launch({ hosts: ['http://127.0.0.1/*'] });
  const { tabId } = await openTab(browser, `${market.url}bare.html`);
  panel = await openPanel(browser, tabId);
  await panel.setViewportSize({ width: 400, height: 900 });
  await panel.getByText('No listing was found on this page.').waitFor({ timeout: patienceMs });
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/** Drops a file on the panel, and gives the page that opens for it. */
async function opened(name: string, text: string): Promise<Page> {
  const arrives = browser.context.waitForEvent('page');
  await give(panel, 'drop', name, 'application/json', Buffer.from(text));
  return arrives;
}
const drafts = () =>
  panel.evaluate(async () =>
    Object.keys(await chrome.storage.local.get(null)).filter((key) => key.startsWith('maker-draft-')),
  );

describe('what is dropped on the panel', () => {
  it('as a photo is read there', async () => {
    await give(panel, 'drop', 'stamp.jpg', 'image/jpeg', readFileSync(stampPhoto));
    await panel.locator('.given-here').getByText('The stamp in photo 1 reads KV0978.').waitFor({ timeout: patienceMs });
    expect(await violations(panel)).toEqual([]);
    expect(await overTheEdge(panel)).toEqual([]);
  });

  it('as a maker file opens among the maker files, once', async () => {
    const page = await opened('velmar.json', fileOn('QA'));
    await page.getByText('Complete: listings are read with it.').waitFor();
    expect(await drafts()).toHaveLength(1);
    await page.goBack();
    await page.getByRole('button', { name: 'Edit' }).waitFor();
    expect(await drafts()).toHaveLength(1);
    await page.close();
  });

  it('as a file on a maker that is here asks which of both holds, and one that is none says so', async () => {
    const both = await opened('velmar-2.json', fileOn('ZC'));
    await both
      .getByRole('heading', { name: /Velmar Lane/ })
      .first()
      .waitFor();
    expect(await drafts()).toHaveLength(1);
    await both.close();
    const none = await opened('half.json', fileOn('QA').slice(0, 40));
    await none.getByText(/^Half\.json, the file: .*not JSON/i).waitFor();
    expect(await drafts()).toHaveLength(1);
    await none.close();
  });
});
