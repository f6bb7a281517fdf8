import { readdirSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { openAged, openLetters } from '../browser/on-bench';
import { openStage, panelStates, type Stage } from '../browser/panel-states';
import { changedOrigin, knownCodes, otherFile } from './maker-samples';

/**
 * Takes every screen in every view, into `out/screenshots`; the few that README and docs show go to `docs/screenshots` too.
 * `npm run screenshots [-- NAME...] [--language de] [--view PART]`, or `en-XA` for English made longer. A view is a width
 * with `light` or `dark`, `forced` colours, or `text-200`; a part of its name picks some.
 */
const root = new URL('../../', import.meta.url);
const out = fileURLToPath(new URL('out/screenshots/', root));
const shown = fileURLToPath(new URL('docs/screenshots/', root));
const committed: ReadonlySet<string> = new Set(readdirSync(shown));
/** Enough to judge a screen by; the editor goes on for metres. */
const tallest = 2400;

interface View {
  name: string;
  width: number;
  colorScheme?: 'light' | 'dark';
  forcedColors?: 'active' | 'none';
  /** Size of the text in shares of the usual one. */
  text?: number;
}
const widths = [280, 320, 400, 600, 1280];
const views: View[] = [
  ...(['light', 'dark'] as const).flatMap((colorScheme) =>
    widths.map((width): View => ({ name: `${width}-${colorScheme}`, width, colorScheme })),
  ),
  ...[400, 1280].flatMap((width): View[] => [
    { name: `${width}-forced`, width, forcedColors: 'active' },
    { name: `${width}-text-200`, width, text: 2 },
  ]),
];

const { values: asked, positionals: wanted } = parseArgs({
  options: { language: { type: 'string', default: 'en' }, view: { type: 'string', default: '' } },
  allowPositionals: true,
});

/** Screens are driven in English and pictured in the language asked for, which they take on as they stand. */
async function spoken(page: Page, language: string): Promise<void> {
  await page.evaluate((chosen) => chrome.storage.local.set({ 'screen-language': chosen }), language);
  await page.waitForFunction((chosen) => document.documentElement.lang === chosen, language);
}

async function inEachView(page: Page, take: (view: View) => Promise<void>): Promise<void> {
  await page.bringToFront();
  await spoken(page, asked.language);
  for (const view of views.filter(({ name }) => name.includes(asked.view))) {
    const { width, colorScheme = 'light', forcedColors = 'none', text = 1 } = view;
    await page.emulateMedia({ colorScheme, forcedColors, reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height: 900 });
    await page.evaluate((share) => {
      document.documentElement.style.fontSize = share === 1 ? '' : `${share * 100}%`;
    }, text);
    await take(view);
  }
  await spoken(page, 'en');
}

const heightOf = (page: Page) => page.evaluate(() => document.documentElement.scrollHeight);

/** Takes one screen, as tall as its content: what sticks to the window's end would else lie across its middle. */
const shoot = (page: Page, name: string): Promise<void> =>
  inEachView(page, async (view) => {
    await page.setViewportSize({
      width: view.width,
      height: Math.min(tallest, Math.max(500, await heightOf(page))),
    });
    await save(await page.screenshot(), `${name}-${view.name}.png`);
  });

/** The part around one element, for pages that go on for metres. */
const shootPart = (page: Page, name: string, selector: string): Promise<void> =>
  inEachView(page, async (view) => {
    await page.setViewportSize({ width: view.width, height: await heightOf(page) });
    await save(await page.locator(selector).screenshot(), `${name}-${view.name}.png`);
  });

/** Few colours, so that the files stay small. */
async function save(picture: Buffer, file: string): Promise<void> {
  const small = await sharp(picture).png({ palette: true, colours: 96, compressionLevel: 9 }).toBuffer();
  const named = asked.language === 'en' ? file : file.replace('.png', `-${asked.language}.png`);
  await writeFile(out + named, small);
  if (committed.has(named)) await writeFile(shown + named, small);
  console.log(`${named} ${Math.round(small.length / 1024)} KB`);
}

const keep = async (panel: Page) => {
  await panel.getByRole('button', { name: 'Keep', exact: true }).click();
  await panel.getByText('Kept.').waitFor();
};

const shots: Record<string, (stage: Stage) => Promise<void>> = {
  ...Object.fromEntries(
    Object.entries(panelStates).map(([state, open]) => [
      `panel-${state}`,
      async (stage: Stage) => {
        const panel = await open(stage);
        await shoot(panel, `panel-${state}`);
        await panel.close();
      },
    ]),
  ),
  async 'panel-open'(stage) {
    const panel = await panelStates.contradiction(stage);
    await panel.evaluate(() => {
      for (const folded of document.querySelectorAll('details')) folded.open = true;
    });
    await shoot(panel, 'panel-open');
  },
  async 'panel-by-hand'(stage) {
    const panel = await panelStates.sound(stage);
    await panel.getByText('Photos', { exact: true }).click();
    await panel.getByRole('button', { name: 'Look at photo 7 by hand' }).click();
    await panel.locator('.by-hand canvas').scrollIntoViewIfNeeded();
    await panel.locator('.by-hand summary', { hasText: 'Measured in this photo' }).click();
    await panel.setViewportSize({ width: 400, height: 900 });
    await shoot(panel, 'panel-by-hand');
  },
  async 'watch-list'(stage) {
    await keep(await panelStates.contradiction(stage));
    await keep(await panelStates.sound(stage));
    const list = await stage.browser.context.newPage();
    await list.goto(stage.browser.extensionUrl('watchlist.html'));
    await list.getByRole('button', { name: 'Export as a file' }).waitFor();
    await shoot(list, 'watch-list');
    await list.locator('.case-row h2 a').last().click();
    await list.locator('.case-page .case').waitFor();
    await shoot(list, 'case');
    await list.getByRole('link', { name: 'Dossier' }).click();
    await list.locator('.time-axis').waitFor();
    await shoot(list, 'dossier');
  },
  async start({ browser }) {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('watchlist.html#start'));
    await page.getByLabel('Type the code as you see it').fill('2496');
    await page.getByRole('button', { name: 'Decode' }).click();
    await page.locator('.answer').waitFor();
    await shoot(page, 'start');
    await page.goto(browser.extensionUrl('watchlist.html#demo'));
    await page.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 300_000 });
    await shoot(page, 'demo');
    await page.goto(browser.extensionUrl('watchlist.html#photo'));
    const stamp = fileURLToPath(new URL('public/demo/stamp.jpg', root));
    await page.locator('input[type=file]').setInputFiles(stamp);
    await page.locator('.loose [data-stage=done]').waitFor({ state: 'attached', timeout: 300_000 });
    await shoot(page, 'photo');
  },
  async 'maker-files'({ browser }) {
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
  async 'maker-travel'({ browser }) {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('watchlist.html#makers'));
    await page.evaluate((stored) => chrome.storage.local.set(stored), changedOrigin());
    await page.reload();
    await page.getByText('changes wait').waitFor();
    await page.getByText('From an address, or as pasted text').click();
    await shoot(page, 'maker-bring');
    await page.goto(browser.extensionUrl('watchlist.html#makers&file=travelled'));
    await page.locator('.file-changes').waitFor();
    await shootPart(page, 'maker-changes', '.origin');
    await page.close();
  },
  async bench({ browser }) {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('watchlist.html#photo'));
    await page.locator('input[type=file]').setInputFiles(fileURLToPath(new URL('public/demo/stamp.jpg', root)));
    await page.getByRole('button', { name: 'Look at photo 1 by hand' }).click({ timeout: 200_000 });
    await page.getByRole('button', { name: 'Measure on this photo' }).click();
    await page.getByRole('button', { name: 'Row of stitches' }).click();
    await page.getByRole('button', { name: 'Colour', exact: true }).click();
    await page.locator('.mark-sheet[data-mark="2"] [data-what="lab"]').waitFor();
    await shoot(page, 'bench');
    await page.locator('.bench summary', { hasText: 'Turn and light' }).click();
    await page.getByLabel('Relief').selectOption('left');
    await page.locator('[data-relief=left]').waitFor();
    await shoot(page, 'bench-relief');
    await page.close();
  },
  async 'bench-letters'(stage) {
    const page = await openLetters(stage, 3);
    await page.locator('.letters-beside tbody tr').first().waitFor();
    await page.locator('.letters-beside summary').click();
    await shootPart(page, 'bench-letters', '.bench-here');
    await page.close();
  },
  async 'bench-aged'(stage) {
    const page = await openAged(stage);
    await shootPart(page, 'bench-aged', '.bench-here');
    await shootPart(page, 'bench-aged-finding', '[data-check="unused-against-photo"]');
    await page.close();
  },
  async 'export-files'({ browser }) {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('watchlist.html'));
    const ask = page.getByRole('button', { name: 'Export as a file' });
    await ask.waitFor();
    await page.evaluate(moreThanAFileHolds);
    await ask.click();
    await page.getByRole('button', { name: 'Save file 1 of 2' }).waitFor({ timeout: 60_000 });
    await shoot(page, 'export-files');
    await page.close();
  },
};

/** Puts more photos into the list's database than one file carries. */
async function moreThanAFileHolds(): Promise<void> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open('tellstamp-watch-list');
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const change = database.transaction('pictures', 'readwrite');
  for (let at = 10; at < 37; at++) {
    const bytes = new Uint8Array(6_000_000).fill(at);
    change.objectStore('pictures').put({ hash: String(at).repeat(32), type: 'image/jpeg', bytes });
  }
  await new Promise((resolve) => {
    change.oncomplete = resolve;
  });
  database.close();
}

await mkdir(out, { recursive: true });
const stage = await openStage();
for (const [name, take] of Object.entries(shots)) {
  if (wanted.length === 0 || wanted.includes(name)) await take(stage);
}
await stage.close();
