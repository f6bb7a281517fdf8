import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { overTheEdge, violations } from './axe';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

const widths = [280, 320, 360, 400, 600];

let market: Market;
let browser: Browser;
let panel: Page;
let list: Page;
let savedCase: Page;
let makers: Page;
let taking: Page;
let dossier: Page;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch();
  const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-25-1987.html`);
  await clickToolbar(browser, page);
  panel = await openPanel(browser, tabId);
  await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 300_000 });
  await panel.getByRole('button', { name: 'Keep' }).click();
  await panel.getByText('Kept.').waitFor();
  const openAll = () =>
    panel.evaluate(() => {
      for (const folded of document.querySelectorAll('details')) folded.open = true;
    });
  await openAll();
  await panel
    .getByRole('button', { name: /by hand$/ })
    .first()
    .click();
  await panel.getByRole('slider', { name: 'Part to read, top left' }).waitFor();
  // What was measured in the photo folds as well.
  await openAll();
  list = await browser.context.newPage();
  await list.goto(browser.extensionUrl('watchlist.html'));
  await list.locator('.case-row').waitFor();
  savedCase = await browser.context.newPage();
  await savedCase.goto(browser.extensionUrl('watchlist.html'));
  await savedCase.locator('.case-row h2 a').click();
  await savedCase.locator('.case-page .case').waitFor();
  dossier = await browser.context.newPage();
  await dossier.goto(browser.extensionUrl('watchlist.html'));
  await dossier.locator('.case-row').getByRole('link', { name: 'Dossier' }).click();
  await dossier.locator('.dossier').waitFor();
  makers = await browser.context.newPage();
  await makers.goto(browser.extensionUrl('watchlist.html#makers'));
  await makers.getByRole('button', { name: 'Copy and change' }).first().click();
  await makers
    .getByRole('button', { name: /^workshop/ })
    .first()
    .click();
  taking = await browser.context.newPage();
  await taking.goto(browser.extensionUrl('watchlist.html#makers&take'));
  const told = new URL('../take-pages/en-table-footnotes.html', import.meta.url);
  await taking.getByLabel('Source of the page (HTML)').fill(readFileSync(told, 'utf8'));
  await taking.getByRole('button', { name: 'Read it' }).click();
  await taking.getByText('The page takes this back').waitFor();
}, 400_000);
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

const screens = ['panel', 'watch list', 'saved case', 'maker editor', 'taking from a page', 'dossier'] as const;
const screen = (name: (typeof screens)[number]) =>
  ({
    panel,
    'watch list': list,
    'saved case': savedCase,
    'maker editor': makers,
    'taking from a page': taking,
    dossier,
  })[name];

describe.each(['light', 'dark'] as const)('every screen, %s', (colorScheme) => {
  it.each(screens)('%s: has nothing against WCAG 2.2 AA that axe-core finds', async (name) => {
    const page = screen(name);
    await page.emulateMedia({ colorScheme });
    // As high as the screen is: the bar at the window's end lies over what happens to be scrolled under it.
    await page.setViewportSize({
      width: 400,
      height: await page.evaluate(() => document.documentElement.scrollHeight),
    });
    expect(await violations(page)).toEqual([]);
  });
});

describe.each(widths)('at %i px', (width) => {
  it.each(screens)('%s: nothing stands over the edge', async (name) => {
    const page = screen(name);
    await page.setViewportSize({ width, height: 900 });
    expect(await overTheEdge(page)).toEqual([]);
  });
});

/** A file's own field stands out of sight behind the button that opens it. */
const everyControl = 'button:enabled, input:not(.visually-hidden), summary, select, textarea, [role="slider"]';

describe('the keyboard', () => {
  it('reaches every control of the panel, with a visible focus', async () => {
    await panel.bringToFront();
    await panel.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const controls = await panel.locator(everyControl).count();
    const reached = new Set<string>();
    // A field for a day takes a step for each of its parts.
    for (let step = 0; step < controls + 15; step++) {
      await panel.keyboard.press('Tab');
      const at = await panel.evaluate((selector) => {
        const element = document.activeElement as HTMLElement;
        const all = [...document.querySelectorAll(selector)];
        return { index: all.indexOf(element), outline: getComputedStyle(element).outlineStyle };
      }, everyControl);
      if (at.index >= 0) {
        reached.add(String(at.index));
        expect(at.outline).not.toBe('none');
      }
    }
    expect(reached.size).toBe(controls);
  });
});
