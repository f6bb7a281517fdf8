import { readdirSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { builtInMakers } from '../../src/maker';
import { type Browser, launch, openPanel, openTab } from '../browser/launch';
import { clickToolbar } from '../browser/toolbar';
import { startMarket } from '../market/server';

/**
 * Takes every screen at every width, by day and by night, into `out/screenshots`; the few that README and docs show go to
 * `docs/screenshots` too. `npm run screenshots [-- NAME...] [--language de]`, or `en-XA` for English made longer.
 */
const root = new URL('../../', import.meta.url);
const out = fileURLToPath(new URL('out/screenshots/', root));
const shown = fileURLToPath(new URL('docs/screenshots/', root));
const committed: ReadonlySet<string> = new Set(readdirSync(shown));
const widths = [320, 400, 600, 1280] as const;
const schemes = ['light', 'dark'] as const;
/** Enough to judge a screen by; the editor goes on for metres. */
const tallest = 2200;
const patienceMs = 300_000;

const { values: asked, positionals: wanted } = parseArgs({
  options: { language: { type: 'string', default: 'en' } },
  allowPositionals: true,
});

/** Screens are driven in English and pictured in the language asked for, which they take on as they stand. */
async function spoken(page: Page, language: string): Promise<void> {
  await page.evaluate((chosen) => chrome.storage.local.set({ 'screen-language': chosen }), language);
  await page.waitForFunction((chosen) => document.documentElement.lang === chosen, language);
}

async function inEachView(page: Page, take: (view: string) => Promise<void>): Promise<void> {
  await spoken(page, asked.language);
  for (const colorScheme of schemes) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    for (const width of widths) {
      await page.setViewportSize({ width, height: 900 });
      await take(`${width}-${colorScheme}`);
    }
  }
  await spoken(page, 'en');
}

const heightOf = (page: Page) => page.evaluate(() => document.documentElement.scrollHeight);

/** Takes one screen, as tall as its content: what sticks to the window's end would else lie across its middle. */
const shoot = (page: Page, name: string): Promise<void> =>
  inEachView(page, async (view) => {
    const width = page.viewportSize()!.width;
    await page.setViewportSize({ width, height: Math.min(tallest, Math.max(500, await heightOf(page))) });
    await save(await page.screenshot(), `${name}-${view}.png`);
  });

/** The part around one element, for pages that go on for metres. */
const shootPart = (page: Page, name: string, selector: string): Promise<void> =>
  inEachView(page, async (view) => {
    const width = page.viewportSize()!.width;
    await page.setViewportSize({ width, height: await heightOf(page) });
    await save(await page.locator(selector).screenshot(), `${name}-${view}.png`);
  });

/** Few colours, so that the files stay small. */
async function save(picture: Buffer, file: string): Promise<void> {
  const small = await sharp(picture).png({ palette: true, colours: 96, compressionLevel: 9 }).toBuffer();
  const named = asked.language === 'en' ? file : file.replace('.png', `-${asked.language}.png`);
  await writeFile(out + named, small);
  if (committed.has(named)) await writeFile(shown + named, small);
  console.log(`${named} ${Math.round(small.length / 1024)} KB`);
}

async function readListing(browser: Browser, url: string): Promise<Page> {
  const { page, tabId } = await openTab(browser, url);
  await clickToolbar(browser, page);
  const panel = await openPanel(browser, tabId);
  await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: patienceMs });
  return panel;
}

const knownCodes = 'KV0915 1995-01 BE\nHJ1929 1999-12 FR\nZM0084 2004-08 ES\nWQ1012 2002-11 US\n';

/** A file of the second built-in maker as someone else may keep it, with a difference of each kind. */
function otherFile(): string {
  const { plants, codeSystems, models, trade, ...rest } = builtInMakers[1]!;
  const [plant, system, model] = [plants[0]!, codeSystems[0]!, models[0]!];
  return JSON.stringify({
    ...rest,
    plants: [{ ...plant, used: ['1979', '1984'], name: 'Canal workshop' }, ...plants.slice(1)],
    codeSystems: [
      { ...system, examples: [...system.examples.slice(1), { ...system.examples[0]!, note: 'from a receipt' }] },
      ...codeSystems.slice(1),
    ],
    models: [{ ...model, size: { width: 31, height: 24, unit: 'cm', tolerance: 2 } }, ...models.slice(1)],
    trade: { ...trade, discounts: 'often' },
  });
}

const shots: Record<string, (browser: Browser, market: string) => Promise<void>> = {
  async 'panel-contradictory'(browser, market) {
    const panel = await readListing(browser, `${market}ondrasse-carryall-25-1987.html`);
    await shoot(panel, 'panel-contradictory');
    await panel.getByRole('button', { name: 'Keep' }).click();
    await panel.getByText('Kept.').waitFor();
  },
  async 'panel-sound'(browser, market) {
    const panel = await readListing(browser, `${market}ondrasse-carryall-30-1995.html`);
    await shoot(panel, 'panel-sound');
    await panel.getByText('Photos', { exact: true }).click();
    await panel.getByRole('button', { name: 'Look at photo 7 by hand' }).click();
    await panel.locator('.by-hand canvas').scrollIntoViewIfNeeded();
    await panel.setViewportSize({ width: 400, height: 900 });
    await shoot(panel, 'panel-by-hand');
    await panel.getByRole('button', { name: 'Keep' }).click();
    await panel.getByText('Kept.').waitFor();
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
    await list.getByRole('link', { name: 'Dossier' }).last().click();
    await list.locator('.time-axis').waitFor();
    await shoot(list, 'dossier');
  },
  async 'maker-files'(browser) {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('watchlist.html#makers'));
    await page.getByRole('button', { name: 'Copy and change' }).nth(1).click();
    await page.getByText('Complete: listings are read with it.').waitFor();
    await page
      .getByRole('button', { name: /^workshop/ })
      .first()
      .click();
    await page.getByText('What is to correct').click();
    await shoot(page, 'maker-editor');
    await page.getByRole('button', { name: /^Undo: / }).click();
    await page.getByText('Work out how the codes are built').click();
    await page.getByRole('textbox', { name: 'Known codes, one a row' }).fill(knownCodes);
    await page.getByRole('button', { name: 'Find layouts' }).click();
    await page.locator('.learn-found').waitFor();
    await shootPart(page, 'maker-learn', 'details:has(.learn-found)');
    await page.getByRole('button', { name: 'Back to the list' }).click();
    await shoot(page, 'maker-files');
    const theirs = { name: 'theirs.json', mimeType: 'application/json', buffer: Buffer.from(otherFile()) };
    await page.locator('input[type=file]').setInputFiles(theirs);
    await shootPart(page, 'maker-merge', 'section:has(> #merge-title)');
  },
};

await mkdir(out, { recursive: true });
const market = await startMarket();
const browser = await launch();
for (const [name, take] of Object.entries(shots)) {
  if (wanted.length === 0 || wanted.includes(name)) await take(browser, market.url);
}
await browser.close();
await market.close();
