import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { type Browser, launch, openPanel, openTab } from '../../tests/browser/launch';
import { clickToolbar } from '../../tests/browser/toolbar';
import { startMarket } from '../../tests/market/server';

const folder = fileURLToPath(new URL('../../docs/screenshots/', import.meta.url));
const widths = [320, 400, 600] as const;
const schemes = ['light', 'dark'] as const;
/** Enough to judge a screen by; the editor goes on for metres. */
const tallest = 2200;
const patienceMs = 300_000;

/** Takes one screen at every width, by day and by night, with few colours so that the files stay small. */
async function shoot(page: Page, name: string): Promise<void> {
  for (const colorScheme of schemes) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    for (const width of widths) {
      await page.setViewportSize({ width, height: 900 });
      // As tall as the content: what sticks to the window's end would else lie across its middle.
      const height = await page.evaluate(() => document.documentElement.scrollHeight);
      await page.setViewportSize({ width, height: Math.min(tallest, Math.max(500, height)) });
      const whole = await page.screenshot();
      const small = await sharp(whole).png({ palette: true, colours: 96, compressionLevel: 9 }).toBuffer();
      await writeFile(`${folder}${name}-${width}-${colorScheme}.png`, small);
      console.log(`${name}-${width}-${colorScheme}.png ${Math.round(small.length / 1024)} KB`);
    }
  }
}

async function readListing(browser: Browser, url: string): Promise<Page> {
  const { page, tabId } = await openTab(browser, url);
  await clickToolbar(browser, page);
  const panel = await openPanel(browser, tabId);
  await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: patienceMs });
  return panel;
}

const wanted = process.argv.slice(2);
const shots: Record<string, (browser: Browser, market: string) => Promise<void>> = {
  async 'panel-contradictory'(browser, market) {
    const panel = await readListing(browser, `${market}ondrasse-carryall-25-1987.html`);
    await shoot(panel, 'panel-contradictory');
    await panel.getByRole('button', { name: 'Save to watch list' }).click();
    await panel.getByText('Saved.').waitFor();
  },
  async 'panel-sound'(browser, market) {
    const panel = await readListing(browser, `${market}ondrasse-carryall-30-1995.html`);
    await shoot(panel, 'panel-sound');
    await panel.getByRole('button', { name: 'Look at photo 7 by hand' }).click();
    await panel.locator('.by-hand canvas').scrollIntoViewIfNeeded();
    await panel.setViewportSize({ width: 400, height: 900 });
    await shoot(panel, 'panel-by-hand');
    await panel.getByRole('button', { name: 'Save to watch list' }).click();
    await panel.getByText('Saved.').waitFor();
  },
  async 'panel-list-page'(browser, market) {
    const panel = await readListing(browser, `${market}index.html`);
    await shoot(panel, 'panel-list-page');
  },
  async 'panel-lapsed'(browser, market) {
    const { tabId } = await openTab(browser, `${market}ondrasse-carryall-30-1995.html`);
    const panel = await openPanel(browser, tabId);
    await panel.getByRole('alert').waitFor();
    await shoot(panel, 'panel-lapsed');
  },
  async 'watch-list'(browser) {
    const list = await browser.context.newPage();
    await list.goto(browser.extensionUrl('watchlist.html'));
    await list.getByRole('button', { name: 'Export as a file' }).waitFor();
    await shoot(list, 'watch-list');
  },
  async 'maker-files'(browser) {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('watchlist.html#makers'));
    await page.getByRole('button', { name: 'Copy and change' }).nth(1).click();
    await page.getByText('Complete: listings are read with it.').waitFor();
    await page
      .getByRole('button', { name: /^plant/ })
      .first()
      .click();
    await shoot(page, 'maker-editor');
    await page.getByRole('button', { name: 'Back to the list' }).click();
    await shoot(page, 'maker-files');
  },
};

await mkdir(folder, { recursive: true });
const market = await startMarket();
const browser = await launch();
for (const [name, take] of Object.entries(shots)) {
  if (wanted.length === 0 || wanted.includes(name)) await take(browser, market.url);
}
await browser.close();
await market.close();
