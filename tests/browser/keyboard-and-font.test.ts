import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

let market: Market;
beforeAll(async () => {
  market = await startMarket();
});
afterAll(() => market?.close());

async function readPanel(browser: Browser): Promise<Page> {
  const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-35-new.html`);
  await clickToolbar(browser, page);
  const panel = await openPanel(browser, tabId);
  await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 300_000 });
  return panel;
}
const focused = (page: Page) =>
  page.evaluate(() => ({ tag: document.activeElement?.tagName, words: document.activeElement?.textContent?.trim() }));

describe('the keyboard’s place', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());

  it('goes to the photo that is opened by hand, and back to its thumbnail', async () => {
    const panel = await readPanel(browser);
    await panel.getByText('Photos', { exact: true }).click();
    const thumbnail = panel.getByRole('button', { name: 'Look at photo 2 by hand' });
    await thumbnail.focus();
    await panel.keyboard.press('Enter');
    await panel.locator('.by-hand').waitFor();
    expect(await focused(panel)).toEqual({ tag: 'H3', words: 'Look at photo 2 by hand' });
    await panel.keyboard.press('Escape');
    await panel.locator('.by-hand').waitFor({ state: 'detached' });
    expect(await thumbnail.evaluate((button) => button === document.activeElement)).toBe(true);

    await panel.getByRole('textbox', { name: 'Type the code as you see it' }).fill('KV0915');
    await panel.keyboard.press('Enter');
    await panel.getByRole('button', { name: 'Remove KV0915' }).press('Enter');
    await panel.getByRole('button', { name: 'Remove KV0915' }).waitFor({ state: 'detached' });
    expect(await focused(panel)).toEqual({ tag: 'INPUT', words: '' });

    await panel.getByRole('button', { name: 'Read again' }).press('Enter');
    await panel.locator('[data-stage=done]').waitFor({ state: 'attached' });
    expect(await focused(panel)).toEqual({ tag: 'BUTTON', words: 'Read again' });
    await panel.close();
  });

  it('goes to the way back when a maker file is deleted, and to the file when it is put back', async () => {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('watchlist.html#makers'));
    await page.getByRole('button', { name: 'Copy and change' }).first().click();
    await page.getByRole('button', { name: 'Back to the list' }).click();
    await page.getByRole('button', { name: 'Delete' }).press('Enter');
    await page.locator('.toast').waitFor();
    expect(await focused(page)).toEqual({ tag: 'BUTTON', words: 'Undo' });
    await page.keyboard.press('Enter');
    await page.locator('.toast').waitFor({ state: 'detached' });
    expect((await focused(page)).tag).toBe('BUTTON');
    await page.close();
  });
});

it('a larger font that is set in the browser makes every screen’s words larger, and none runs out of it', async () => {
  const browser = await launch({ flags: ['--blink-settings=defaultFontSize=24'] });
  try {
    const panel = await readPanel(browser);
    const makers = await browser.context.newPage();
    await makers.goto(browser.extensionUrl('watchlist.html#makers'));
    await makers.getByRole('button', { name: 'Copy and change' }).first().click();
    for (const page of [panel, makers]) {
      await page.setViewportSize({ width: 320, height: 900 });
      const sizes = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('body *')]
          .filter((one) => [...one.childNodes].some(({ nodeType, nodeValue }) => nodeType === 3 && nodeValue?.trim()))
          .map((one) => Number.parseFloat(getComputedStyle(one).fontSize)),
      );
      expect(sizes.length).toBeGreaterThan(20);
      // The smallest is 11.7 pixels at the usual size of 16.
      expect(Math.min(...sizes)).toBeGreaterThan(17);
      const over = await page.evaluate(() =>
        [...document.querySelectorAll('body *')]
          .filter(
            (one) => one.getBoundingClientRect().right > innerWidth + 1 && one.closest('.visually-hidden') === null,
          )
          .map((one) => one.outerHTML.slice(0, 120)),
      );
      expect(over).toEqual([]);
    }
  } finally {
    await browser.close();
  }
});
