import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';
import { mismatches, type Truth } from './truth';

const truth = JSON.parse(readFileSync(new URL('../market/truth.json', import.meta.url), 'utf8')) as {
  listings: Truth[];
};

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

describe('the main job on every demo listing, from the click on the toolbar', () => {
  it.each(truth.listings)('$page: $title', async (listing) => {
    const { page, tabId } = await openTab(browser, market.url + listing.page);
    const panel = await openSidePanel(browser, page, tabId);
    await panel.untilRead();
    const shown = {
      title: await panel.evaluate<string>(`document.querySelector('.listing-title').innerText`),
      codes: await panel.codes(),
      findings: await panel.findings(),
    };
    expect(mismatches(listing, shown), JSON.stringify(shown, null, 2)).toEqual([]);
    await panel.close();
    await page.close();
  });
});
