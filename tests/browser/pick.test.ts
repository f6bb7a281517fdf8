import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openPanel, openTab } from './launch';
import { openSidePanel } from './toolbar';

/** A shop that writes its price where nothing says that it is one. */
const shop = (title: string, asked: string) => `<!doctype html><html lang="en"><head><title>${title}</title>
<script type="application/ld+json">{"@context":"https://schema.org","@type":"Product","name":"${title}","brand":"Ondrasse"}</script>
</head><body><main><h1>${title}</h1><section class="deal"><p class="asked">${asked}</p></section>
<p>Made in 1995.</p></main></body></html>`;

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  market.make('one.html', { type: 'text/html', body: shop('Ondrasse Carryall 30', '540 euro') });
  market.make('two.html', { type: 'text/html', body: shop('Ondrasse Carryall 25', '310 euro') });
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/**
 * A panel in a tab of its own, opened when the real one has read: its reading would end the pointing. The browser shows a
 * closed panel again when its tab comes to the front, and that one would read too: the tab has no real panel any more.
 */
async function panelBeside(page: Page, tabId: number): Promise<Page> {
  const side = await openSidePanel(browser, page, tabId);
  await side.untilRead();
  await side.close();
  const worker = await browser.worker();
  await worker.evaluate((id) => chrome.sidePanel.setOptions({ tabId: id, enabled: false }), tabId);
  return openPanel(browser, tabId);
}

describe('pointing at a field on the page', () => {
  it('is taken, shown as pointed at, remembered for the site, and undone', async () => {
    const first = await openTab(browser, `${market.url}one.html`);
    const panel = await panelBeside(first.page, first.tabId);
    await panel.getByText('What the listing claims').click();
    await panel.getByText('Something was read wrong').click();
    await panel.getByLabel('Field').selectOption('price');
    await panel.getByRole('button', { name: 'Point at it on the page' }).click();
    await panel.getByText('Click it on the page.').waitFor();
    await first.page.bringToFront();
    await first.page.locator('.asked').hover();
    await first.page.locator('.asked').click();
    await panel.getByText('Pointed at by you, remembered for this site:').waitFor();
    await panel.locator('.listing-header').getByText('540.00 EUR').waitFor();
    await panel.close();

    const second = await openTab(browser, `${market.url}two.html`);
    const other = await panelBeside(second.page, second.tabId);
    await other.locator('.listing-header').getByText('310.00 EUR').waitFor();
    await other.getByRole('button', { name: 'Forget price' }).click();
    await other.getByText('Pointed at by you').waitFor({ state: 'detached' });
    await other.close();
    await second.page.close();
    await first.page.close();
  });

  it('ends with Escape and changes nothing', async () => {
    const { page, tabId } = await openTab(browser, `${market.url}one.html`);
    const panel = await panelBeside(page, tabId);
    await panel.getByText('What the listing claims').click();
    await panel.getByText('Something was read wrong').click();
    await panel.getByRole('button', { name: 'Point at it on the page' }).click();
    await panel.getByText('Click it on the page.').waitFor();
    await page.bringToFront();
    await page.keyboard.press('Escape');
    await panel.getByText('Nothing was chosen.').waitFor();
    expect(await panel.getByText('Pointed at by you').count()).toBe(0);
    await panel.close();
    await page.close();
  });
});
