import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';

/** A listing that much speaks against, so that many sentences are shown; without photos, which take long to read. */
const title = 'Ondrasse Carryall 30';
const words =
  'Made in 1985, made in West Germany. Date code KV0915, also KV9915. Brand new, never used, brass fittings. 40 x 20 x 12 cm. Inside a label: RN 13670, Pat. No. 2,544,409, hallmark sterling 925.';
const listing = `<!doctype html><html lang="en"><head><title>Carryall</title><script type="application/ld+json">
${JSON.stringify({
  '@context': 'https://schema.org',
  '@type': 'Product',
  name: title,
  brand: 'Ondrasse',
  description: words,
  offers: { '@type': 'Offer', price: '140.00', priceCurrency: 'EUR' },
})}</script></head><body><main><h1>${title}</h1><p>€140.00</p><p>${words}</p></main></body></html>`;

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  market.make('piece.html', { type: 'text/html', body: listing });
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/** The sentences of a document, folded or not: what stands in each element that holds text of its own. */
const sentences = `(() => {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const said = new Set();
  while (walker.nextNode()) {
    const text = walker.currentNode.data.replace(/\\s+/g, ' ').trim();
    if (/\\p{L}{3,}.*\\s.*\\p{L}{2,}/u.test(text) && !walker.currentNode.parentElement.closest('script, style, option, textarea'))
      said.add(text);
  }
  return [...said];
})()`;

/** What no language changes: the seller's own words, names, and documents as they name themselves. */
const isOwn = (text: string): boolean =>
  [title, words].some((own) => own.toLowerCase().includes(text.toLowerCase())) ||
  /^(?:invented for the demonstration|US FTC|Basic Law|Directive|S\.I\.|ISO 3166|international yard)/.test(text);
const same = (a: string[], b: string[]) => a.filter((one) => b.includes(one) && !isOwn(one));
/** German sentences with English in them: what is quoted, named as a source or the seller's own is left out first. */
const english = /\b(?:the|of|were|with|and|from|which|that|is|are|by|has|not|no|its?)\b/i;
const mixed = (german: string[]) =>
  german.filter(
    (one) =>
      !isOwn(one) &&
      !/Quelle:/.test(one) &&
      english.test(one.replace(/„[^“]*“|“[^”]*”|invented for the demonstration/g, '')),
  );

/** The sentences of the case's dossier, opened from the list. */
async function dossierOf(list: Page, name: string): Promise<string[]> {
  await list.locator('.case-row').getByRole('link', { name: title }).click();
  await list.locator('.case-page').getByRole('link', { name }).click();
  await list.locator('.dossier').waitFor();
  return list.evaluate<string[]>(sentences);
}

it('another language is seen at once in every open screen, whole, and is kept', async () => {
  const { page, tabId } = await openTab(browser, `${market.url}piece.html`);
  const panel = await openSidePanel(browser, page, tabId);
  await panel.untilRead();
  await panel.click('Keep');
  await panel.until(`document.querySelector('.save-bar').innerText.includes('Kept.')`);
  const before = await panel.evaluate<string[]>(sentences);

  const list = await browser.context.newPage();
  await list.goto(browser.extensionUrl('watchlist.html'));
  await list.locator('.case-row').waitFor();
  const englishList = await list.evaluate<string[]>(sentences);
  const englishDossier = await dossierOf(list, 'Dossier');
  await list.goto(browser.extensionUrl('watchlist.html'));
  await list.locator('.language-choice select').selectOption('de');
  await list.locator('html[lang=de]').waitFor();
  await panel.until(`document.documentElement.lang === 'de'`);
  // What is said aloud follows within a second.
  await panel.until(
    `![...document.querySelectorAll('[role=status]')].some((one) => /^(Page|Reading)/.test(one.textContent))`,
  );
  const worker = await browser.worker();
  await expect.poll(() => worker.evaluate(() => chrome.action.getTitle({}))).toBe('Dieses Angebot mit Tellstamp lesen');
  const german = await panel.evaluate<string[]>(sentences);
  await list.locator('.case-row').waitFor();
  const germanList = await list.evaluate<string[]>(sentences);
  const germanDossier = await dossierOf(list, 'Dossier');
  expect(german.length).toBeGreaterThan(20);
  expect(germanDossier.length).toBeGreaterThan(40);
  expect(same(before, german)).toEqual([]);
  expect(same(englishList, germanList)).toEqual([]);
  expect(same(englishDossier, germanDossier)).toEqual([]);
  expect(mixed([...german, ...germanList, ...germanDossier])).toEqual([]);

  await list.reload();
  await list.locator('html[lang=de]').waitFor();
});

it('the browser takes what it says of the extension from the package’s own sentences', async () => {
  const worker = await browser.worker();
  const described = await worker.evaluate(() => [
    chrome.runtime.getManifest().description,
    chrome.i18n.getUILanguage(),
  ]);
  // Debian's Chromium has no languages but English without a package of its own.
  expect(described).toEqual([expect.stringMatching(/^Reads a second-hand listing/), expect.stringMatching(/^en/)]);
});
