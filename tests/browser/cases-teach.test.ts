import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { overTheEdge, violations } from './axe';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

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

describe('a kept case whose date a receipt settles', () => {
  it('gives its code to the file of its maker, and stands behind the system that explains it', async () => {
    const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-25-1987.html`);
    await clickToolbar(browser, page);
    const panel = await openPanel(browser, tabId);
    await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 300_000 });
    await panel.getByRole('button', { name: 'Keep', exact: true }).click();
    await panel.getByText('Kept.').waitFor();
    const code = (await panel.locator('.stamp-text').first().textContent()) ?? '';
    const full = await browser.context.newPage();
    await full.goto(browser.extensionUrl('watchlist.html'));
    await full.locator('.case-row h2 a').click();
    await full.getByText('Do you know otherwise when it was made?').click();
    await full.getByLabel('Made', { exact: true }).fill('no day');
    await full.getByRole('button', { name: 'Keep this date' }).click();
    await full.getByText('“no day” is not a date.').waitFor();
    await full.getByLabel('Made', { exact: true }).fill('July 1998');
    await full.getByLabel('Country', { exact: true }).fill('Belgium');
    await full.getByRole('button', { name: 'Keep this date' }).click();
    await full.getByText('Made: July 1998, Belgium, known from a receipt.').waitFor();
    await full.setViewportSize({ width: 320, height: 900 });
    expect(await overTheEdge(full)).toEqual([]);
    expect(await violations(full)).toEqual([]);
    await full.setViewportSize({ width: 1280, height: 900 });
    // It is kept with the case.
    await full.reload();
    await full.getByRole('button', { name: `Give ${code} to the file on Ondrasse as an example` }).click();
    const rows = full.getByRole('textbox', { name: 'Known codes, one a row' });
    await rows.waitFor();
    expect(await rows.inputValue()).toBe(`${code}, 1998-07, BE`);

    // In another file of the maker the case is found as well, and stands behind what explains it.
    await full.getByRole('button', { name: 'Back to the list' }).click();
    await full
      .locator('article')
      .filter({ has: full.getByRole('heading', { name: 'Ondrasse' }) })
      .getByRole('button', { name: 'Copy and change' })
      .click();
    await full.getByText('1 of your kept cases bears this out.').waitFor({ state: 'attached' });
    await full.getByText('Work out how the codes are built').click();
    await full.getByRole('button', { name: 'Take from my cases (1 settled)' }).click();
    expect(await full.getByRole('textbox', { name: 'Known codes, one a row' }).inputValue()).toBe(
      `${code}, 1998-07, BE`,
    );
  });
});
