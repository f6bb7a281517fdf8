import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';

/** A listing without photos: what is tested here is what is kept, and reading photos takes long. */
const listing = `<!doctype html><html lang="en"><head><title>Carryall</title><script type="application/ld+json">
{"@context":"https://schema.org","@type":"Product","name":"Ondrasse Carryall 30","brand":"Ondrasse",
"description":"Made in 1995, made in Belgium. Date code KV0915.",
"offers":{"@type":"Offer","price":"540.00","priceCurrency":"EUR"}}
</script></head><body><main><h1>Ondrasse Carryall 30</h1><p>€540.00</p>
<p>Made in 1995, made in Belgium. Date code KV0915.</p></main></body></html>`;

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

const savedCase = `document.querySelector('.save-bar').innerText`;

async function readAndSave(): Promise<void> {
  const { page, tabId } = await openTab(browser, `${market.url}piece.html`);
  const panel = await openSidePanel(browser, page, tabId);
  await panel.untilRead();
  expect(await panel.codes()).toEqual(['KV0915']);
  await panel.click('Keep');
  await panel.until(`${savedCase}.includes('Kept.')`);
  await panel.close();
  await page.close();
}

describe('what was saved', () => {
  it('is found again by a later visit, survives the end of the browser, a deletion and its undo', async () => {
    await readAndSave();

    const { page, tabId } = await openTab(browser, `${market.url}piece.html?utm_source=mail`);
    const second = await openSidePanel(browser, page, tabId);
    await second.untilRead();
    await second.until(`${savedCase}.includes('Kept on') && ${savedCase}.includes('Open the kept case')`);
    await second.close();

    await browser.end();
    browser = await launch({ profile: browser.profile });
    const list = await browser.context.newPage();
    await list.goto(browser.extensionUrl('watchlist.html'));
    const row = list.locator('.case-row');
    const opened = list.locator('.case-page');
    await row.waitFor();
    expect(await row.locator('h2').first().textContent()).toBe('Ondrasse Carryall 30');

    await row.getByRole('link', { name: 'Ondrasse Carryall 30' }).click();
    await opened
      .getByRole('heading', { name: 'The code that the listing quotes reads January 1995, Belgium.' })
      .waitFor();
    await opened.getByRole('textbox', { name: 'Note' }).fill('asked for a photo of the lining');
    await opened.getByRole('button', { name: 'Save note' }).click();
    await opened.getByText('Note saved.').waitFor();
    await opened.getByLabel('Status').selectOption('asked');
    await opened.getByRole('link', { name: 'Back to the list' }).click();
    await row.waitFor();
    // Focus comes once the row stands.
    await list.waitForFunction(() => document.activeElement?.textContent === 'Ondrasse Carryall 30');

    await row.getByRole('button', { name: 'Delete' }).click();
    await list.getByText('Deleted: Ondrasse Carryall 30').waitFor();
    expect(await row.count()).toBe(0);
    await list.waitForFunction(() => document.activeElement?.textContent === 'Undo');
    await list.keyboard.press('Enter');
    await row.waitFor();

    await list.reload();
    await row.waitFor();
    expect(await row.getByLabel('Status').inputValue()).toBe('asked');
    await row.getByRole('link', { name: 'Ondrasse Carryall 30' }).click();
    expect(await opened.getByRole('textbox', { name: 'Note' }).inputValue()).toBe('asked for a photo of the lining');
    await list.close();
  });

  it('is exported and imported by hand, and a wrong file changes nothing', async () => {
    const list = await browser.context.newPage();
    await list.goto(browser.extensionUrl('watchlist.html'));
    await list.locator('.case-row').waitFor();
    const [download] = await Promise.all([
      list.waitForEvent('download'),
      list.getByRole('button', { name: 'Export as a file' }).click(),
    ]);
    const file = await download.path();
    const chooser = list.locator('input[type=file]');
    await chooser.setInputFiles({
      name: 'cut.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"format":"tellstamp-watch-list","ver'),
    });
    await list.getByText('cut off').waitFor();
    await chooser.setInputFiles({
      name: 'other.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"songs":[]}'),
    });
    await list.getByText('not an export of the watch list').waitFor();
    expect(await list.locator('.case-row').count()).toBe(1);
    await chooser.setInputFiles(file);
    await list.getByText('0 added, 1 the same as here.').waitFor();
    await list.close();
  });

  it('is missed when the browser wiped it, also after the next save, until the buyer takes note', async () => {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('icon/icon.svg'));
    await page.evaluate(
      () =>
        new Promise<void>((gone, refused) => {
          const request = indexedDB.deleteDatabase('tellstamp-watch-list');
          request.onsuccess = () => gone();
          request.onerror = () => refused(request.error);
        }),
    );
    await readAndSave();
    const warning = page.getByRole('alert').getByText('The browser has removed the watch list that was here.');
    await page.goto(browser.extensionUrl('watchlist.html'));
    await page.locator('.case-row').waitFor();
    await warning.waitFor();
    expect(await warning.textContent()).toContain('It held 1 record when it was last changed.');
    await page.getByRole('button', { name: 'I know: go on with this list' }).click();
    await warning.waitFor({ state: 'detached' });
    await page.reload();
    await page.locator('.case-row').waitFor();
    expect(await warning.count()).toBe(0);
    await page.close();
  });
});
