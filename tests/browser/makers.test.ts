import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

let market: Market;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch();
  page = await browser.context.newPage();
  await page.setViewportSize({ width: 900, height: 900 });
  await page.goto(browser.extensionUrl('watchlist.html#makers'));
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });

describe('a maker file written by hand', () => {
  it('is built by clicking slots, with its example decoding beside them', async () => {
    await button('New file').click();
    await page.getByLabel('Maker', { exact: true }).fill('Velmar Lane');
    await button('Add a code system').click();
    await button('workshop').click();
    await button('year').click();
    await button('month').click();
    await button('Add a workshop').click();
    const plants = page.locator('section.entries', { has: page.getByRole('heading', { name: /^Workshops/ }) });
    await plants.getByLabel('Code', { exact: true }).fill('QA');
    await plants.getByLabel('Country (ISO code)').fill('PT');
    await button('Add an example').click();
    const example = page.locator('.entry .entry').last();
    await example.getByLabel('Code', { exact: true }).fill('QA9407');
    await example.getByLabel('Reads').fill('1994-07, PT');
    await example.locator('.live').getByText('reads so').waitFor();
    await page.getByText('Complete: listings are read with it.').waitFor();
    await example.getByLabel('Reads').fill('1995-07, PT');
    await example.locator('.live').getByText('reads otherwise').waitFor();
    await page.getByText(/to correct before listings are read/).waitFor();
    await button(/^Undo: /).click();
    await page.getByText('Complete: listings are read with it.').waitFor();
  });

  it('says what is wrong at the field, in plain words', async () => {
    const country = page.getByLabel('Country (ISO code)');
    await country.fill('Portugal');
    const field = page.locator('.field', { has: country });
    await field.locator('.field-problems').getByText('ISO 3166').waitFor();
    expect(await country.getAttribute('aria-invalid')).toBe('true');
    await button(/^Undo: /).click();
    await field.locator('.field-problems').waitFor({ state: 'detached' });
  });

  it('loses nothing on reload, and can still be undone after it', async () => {
    await page.reload();
    expect(await page.getByLabel('Maker', { exact: true }).inputValue()).toBe('Velmar Lane');
    const undo = button(/^Undo: /);
    await undo.waitFor();
    expect(await undo.isEnabled()).toBe(true);
  });

  it('is what a listing of that maker is read with', async () => {
    market.make('velmar.html', {
      type: 'text/html',
      body: `<!doctype html><html lang="en"><head><title>Tote</title><script type="application/ld+json">
        {"@context":"https://schema.org","@type":"Product","name":"Velmar Lane tote","brand":"Velmar Lane",
        "description":"Made in 1994. Date code QA9407.","offers":{"@type":"Offer","price":"90","priceCurrency":"EUR"}}
        </script></head><body><main><h1>Velmar Lane tote</h1><p>€90</p><p>Made in 1994. Date code QA9407.</p></main></body></html>`,
    });
    const { page: shop, tabId } = await openTab(browser, `${market.url}velmar.html`);
    await clickToolbar(browser, shop);
    const panel = await openPanel(browser, tabId);
    await panel.getByText('by the Velmar Lane file').waitFor();
    await panel.locator('.answer h2').getByText('July 1994, Portugal').waitFor();
    await panel.close();
    await shop.close();
  });

  it('is exported, joined with another file of the maker by choice, deleted and put back', async () => {
    const [download] = await Promise.all([page.waitForEvent('download'), button('Export').click()]);
    const exported = JSON.parse(readFileSync(await download.path(), 'utf8'));
    expect(exported).toMatchObject({ format: 2, maker: 'Velmar Lane' });
    const theirs = {
      ...exported,
      plants: [
        { code: 'QA', place: 'PT', used: ['1980', '2001'] },
        { code: 'ZC', place: 'ES', used: ['1990', null] },
      ],
    };
    await button('Back to the list').click();
    const buffer = Buffer.from(JSON.stringify(theirs));
    await page.locator('input[type=file]').setInputFiles({ name: 'theirs.json', mimeType: 'application/json', buffer });
    await page.getByText('They differ in 1 place.').waitFor();
    await page.getByLabel(/^Imported/).check();
    await button('Merge').click();
    await page.getByText('Complete: listings are read with it.').waitFor();
    const codes = page
      .locator('section.entries', { has: page.getByRole('heading', { name: /^Workshops/ }) })
      .getByLabel('Code', { exact: true });
    expect(await codes.evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value))).toEqual([
      'QA',
      'ZC',
    ]);
    await button('Back to the list').click();
    await button('Delete').click();
    await page.getByText('You have none yet.').waitFor();
    await button('Undo').click();
    await page.getByRole('heading', { name: 'Velmar Lane' }).waitFor();
  });

  it('refuses what is no maker file, and says why', async () => {
    const buffer = Buffer.from('{"format": 1, "maker":');
    await page.locator('input[type=file]').setInputFiles({ name: 'cut.json', mimeType: 'application/json', buffer });
    await page.getByRole('alert').locator('.problem').first().waitFor();
    expect(await page.getByRole('heading', { level: 3 }).count()).toBe(4);
  });
});

describe('a maker file learned from known codes', () => {
  it('names faulty rows, finds the layout, and takes it into the file as one step that can be undone', async () => {
    await button('New file').click();
    await page.getByLabel('Maker', { exact: true }).fill('Tessaro Vell');
    await page.getByText('Work out how the codes are built').click();
    const codes = page.getByLabel('Known codes, one a row');
    const good = 'KV0915, 1995-01, BE\nHJ1929, 1999-12, FR\nZM0084 2004-08 Spain\nWQ1012 = 2002-11, US\n';
    await codes.fill(`${good}KV0963, 1993-16, BE\nHJ0052, 2002-05, FR\nKV0936, 1991-03, BE`);
    await page.getByText('“1993-16” is not a date.').waitFor();
    await button('Find layouts').click();
    await page.getByRole('alert').getByText('First correct row 5.').waitFor();
    const marked = await codes.evaluate((area: HTMLTextAreaElement) =>
      area === document.activeElement ? area.value.slice(area.selectionStart, area.selectionEnd) : null,
    );
    expect(marked).toBe('KV0963, 1993-16, BE');
    await page.keyboard.insertText('KV0963, 1993-06, BE');
    await page.getByText('7 rows understood', { exact: true }).waitFor();
    await button('Find layouts').press('Enter');
    const layout = page.locator('.learn-found li.entry');
    await page.locator('.learn-doubted').getByText('Row 7, KV0936: the layout reads 1996-03, BE in it.').waitFor();
    expect(await layout.getByRole('listitem').allTextContents()).toEqual([
      'workshop 2',
      'month tens',
      'year tens',
      'month units',
      'year units',
    ]);
    await page.reload();
    expect(await codes.inputValue()).toContain('KV0963, 1993-06, BE');
    await button('Find layouts').click();
    await button('Write explanation 1 into this file').click();
    await page.getByText('In this file as code system “learned”, with its examples.').waitFor();
    await page.getByText('Complete: listings are read with it.').waitFor();
    expect(await page.locator('.entry .live').allTextContents()).toHaveLength(6);
    await button(/^Undo: /).click();
    await page.getByText('In this file as code system').waitFor({ state: 'detached' });
    expect(await page.locator('.entry .live').count()).toBe(0);
    await button('Back to the list').click();
  });
});
