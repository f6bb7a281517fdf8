import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { violations } from './axe';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

const html = (name: string) => readFileSync(new URL(`../take-pages/${name}.html`, import.meta.url), 'utf8');

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

/** The full page that the next step opens. */
const opened = (act: () => Promise<unknown>): Promise<Page> =>
  Promise.all([browser.context.waitForEvent('page'), act()]).then(([page]) => page);

describe('a maker file taken from a page', () => {
  it('that tells codes in a table is a finished file after four actions, and nothing is saved before', async () => {
    market.make('codes.html', { type: 'text/html', body: html('en-table-plants') });
    const { page, tabId } = await openTab(browser, `${market.url}codes.html`);
    await clickToolbar(browser, page);
    const panel = await openPanel(browser, tabId);
    const full = await opened(() => panel.getByRole('button', { name: 'Take a maker file from this page' }).click());
    await full.getByText('This page tells 6 things').waitFor();
    expect(await full.getByText('KV: Belgium, 1982 to 2003').isVisible()).toBe(true);
    const saved = () => full.evaluate(async () => Object.keys(await chrome.storage.local.get(null)));
    expect((await saved()).filter((key) => key.startsWith('maker-draft-'))).toEqual([]);
    await full.getByRole('button', { name: 'Open the 6 ticked as a draft for Ondrasse' }).click();
    await full.getByText('Complete: listings are read with it.').waitFor();
    expect(await full.getByLabel('Maker', { exact: true }).inputValue()).toBe('Ondrasse');
    await full.close();
  });

  it('shows the words of a proposal where they stand on the page, and says when they are gone', async () => {
    market.make('words.html', { type: 'text/html', body: html('en-table-plants') });
    const { page, tabId } = await openTab(browser, `${market.url}words.html`);
    await clickToolbar(browser, page);
    const panel = await openPanel(browser, tabId);
    const full = await opened(() => panel.getByRole('button', { name: 'Take a maker file from this page' }).click());
    const show = full.getByRole('button', { name: /^Show on the page: LD/ });
    await show.click();
    const marked = () => page.evaluate(() => String(getSelection()).replace(/\s+/g, ' '));
    await expect.poll(marked).toBe('LD Belgium since 1996');
    await expect.poll(() => page.evaluate(() => document.visibilityState)).toBe('visible');
    await page.evaluate(() => document.querySelector('table')?.remove());
    await show.click();
    await full.getByText('The page no longer shows these words').waitFor();
    await full.close();
  });

  it('whose rows contradict each other shows both, unticked, and says so', async () => {
    const full = await browser.context.newPage();
    await full.goto(browser.extensionUrl('watchlist.html#makers&take'));
    await full.getByLabel('Source of the page (HTML)').fill(html('en-table-lookalike'));
    await full.getByRole('button', { name: 'Read it' }).click();
    const entry = full.getByLabel(/BA: United Kingdom, 1964 to 19/);
    await entry.first().waitFor();
    expect(await entry.evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).checked))).toEqual([
      false,
      false,
    ]);
    expect(await full.getByText('The page says otherwise elsewhere').count()).toBe(2);
    await full.close();
  });

  it('that is sure of none of its two makers asks whether it is of one alone', async () => {
    const full = await browser.context.newPage();
    await full.goto(browser.extensionUrl('watchlist.html#makers&take'));
    const list = (...items: string[]) => `<ul>${items.map((item) => `<li>${item}</li>`).join('')}</ul>`;
    const greyfell = list('AB: Alton, England', 'CD: Cadiz, Spain');
    const tollmere = list('EF: Evora, Portugal', 'GH: Ghent, Belgium');
    await full
      .getByLabel('Source of the page (HTML)')
      .fill(
        `<title>Codes</title><h1>Codes</h1><h2>Greyfell</h2>${greyfell}<h2>Tollmere</h2>${tollmere}<p>Both Greyfell and Tollmere are gone.</p>`,
      );
    await full.getByRole('button', { name: 'Read it' }).click();
    const ofEach = full.getByRole('group', { name: 'Of which maker?' });
    await ofEach.waitFor();
    expect(await violations(full)).toEqual([]);
    await full.getByRole('button', { name: 'Open the 2 ticked as a draft for Greyfell' }).waitFor();
    await ofEach.getByLabel('Only Tollmere').check();
    await full.getByRole('button', { name: 'Open the 4 ticked as a draft for Tollmere' }).waitFor();
    expect(await full.getByRole('heading', { name: 'Greyfell' }).count()).toBe(0);
    await ofEach.getByLabel('Of each, as shown').check();
    await full.getByRole('button', { name: 'Open the 2 ticked as a draft for Greyfell' }).waitFor();
    await full.close();
  });

  it('says what a code would read by what is ticked, before anything is opened', async () => {
    const full = await browser.context.newPage();
    await full.goto(browser.extensionUrl('watchlist.html#makers&take'));
    await full.getByLabel('Source of the page (HTML)').fill(html('en-table-systems'));
    await full.getByRole('button', { name: 'Read it' }).click();
    const code = full.getByLabel('Try a code with what is ticked');
    await code.fill('KV0978');
    await full.getByText('With what is ticked it would read July 1998.').waitFor();
    await full.getByLabel(/All 5 of this table/).uncheck();
    await full.getByText('Nothing that is ticked explains it.').waitFor();
    expect(await violations(full)).toEqual([]);
    await full.close();
  });

  it('of two makers is two files', async () => {
    const full = await browser.context.newPage();
    await full.goto(browser.extensionUrl('watchlist.html#makers&take'));
    await full.getByLabel('Source of the page (HTML)').fill(html('en-table-two-sections'));
    await full.getByRole('button', { name: 'Read it' }).click();
    await full.getByRole('button', { name: /draft for Ondrasse/ }).waitFor();
    expect(await full.getByRole('button', { name: /draft for Tessaro Vell/ }).count()).toBe(1);
    await full.close();
  });

  it('that does not say plainly of whom it tells asks once, with the likeliest name and others', async () => {
    const full = await browser.context.newPage();
    await full.goto(browser.extensionUrl('watchlist.html#makers&take&for=Brindlecote'));
    const page = (text: string) =>
      `<html lang="en"><title>Notes on Harkaway</title><h1>Notes on Harkaway</h1><p>${text}</p><p>AB stands for Alton, AC for Cyprus.</p></html>`;
    const source = full.getByLabel('Source of the page (HTML)');
    await source.fill(
      page('Harkaway bags are rare; a Brindlecote has four digits, month and year: 0478 is April 1978.'),
    );
    await full.getByRole('button', { name: 'Read it' }).click();
    const name = full.getByLabel('Maker’s name');
    await name.waitFor();
    expect(await name.inputValue()).toBe('Brindlecote');
    await full.getByRole('button', { name: 'Harkaway', exact: true }).click();
    expect(await name.inputValue()).toBe('Harkaway');
    expect(await full.getByRole('button', { name: 'Brindlecote', exact: true }).isVisible()).toBe(true);
    await name.fill('Brindlecote & Sons');
    expect(await violations(full)).toEqual([]);
    await full.getByRole('button', { name: /draft for Brindlecote & Sons/ }).click();
    await full.getByLabel('Maker', { exact: true }).waitFor();
    expect(await full.getByLabel('Maker', { exact: true }).inputValue()).toBe('Brindlecote & Sons');
    await full.close();
  });

  it('that is a PDF says what to do, and its text is read when it is pasted', async () => {
    const full = await browser.context.newPage();
    await full.goto(browser.extensionUrl('watchlist.html#makers&take'));
    const file = { name: 'codes.pdf', mimeType: 'application/pdf', buffer: Buffer.from('%PDF-1.7 …') };
    await full.locator('.take-bring input[type="file"]').setInputFiles(file);
    await full.getByText('A PDF is not read as a file.').waitFor();
    const text =
      'BRIARCOTE LEATHER CO.\n\nFrom 1962 to 1975 all Briarcote bags were stamped with four figures, the month\nfirst and then the year. 0866 is August 1966.\n\nBN stands for Newry < Down.';
    await full.getByLabel('Source of the page (HTML)').fill(text);
    await full.getByRole('button', { name: 'Read it' }).click();
    await full.getByText('0866').first().waitFor();
    await full.getByRole('button', { name: /draft for Briarcote/ }).waitFor();
    await full.close();
  });

  it('that tells nothing says so, in the panel', async () => {
    market.make('mention.html', { type: 'text/html', body: html('en-none-mention') });
    const { page, tabId } = await openTab(browser, `${market.url}mention.html`);
    await clickToolbar(browser, page);
    const panel = await openPanel(browser, tabId);
    await panel.getByRole('button', { name: 'Take a maker file from this page' }).click();
    await panel.getByText('This page tells nothing of codes').waitFor();
  });
});
