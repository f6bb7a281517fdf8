import { createHash } from 'node:crypto';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { overTheEdge, violations } from './axe';
import { type Browser, launch, openPanel, openTab } from './launch';
import { file, leadTo, type PhotoHost, startPhotoHost, withoutEnd } from './photo-host';

let host: PhotoHost;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  host = await startPhotoHost();
  // The right to this machine is there from the start: no test can answer the browser's own question.
  browser = await launch({ hosts: ['http://127.0.0.1/*'] });
  page = await browser.context.newPage();
  await page.setViewportSize({ width: 900, height: 900 });
  await page.goto(browser.extensionUrl('watchlist.html#makers'));
  // What was read from the browser stands, and so does what listens for a paste.
  await page.getByText('You have none yet.').waitFor();
});
afterAll(async () => {
  await browser?.close();
  await host?.close();
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
const alert = () => page.getByRole('alert').locator('.problem');
const address = (path: string) => `http://127.0.0.1:${host.port}${path}`;
const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');

const plant = (code: string, place: string, from: string) => ({ code, place, used: [from, null] });
const fileWith = (plants: object[], more: object = {}) =>
  JSON.stringify({ format: 2, maker: 'Velmar Lane', authors: ['A. Keeper'], licence: 'CC0-1.0', plants, ...more });
const first = fileWith([plant('QA', 'PT', '1980'), plant('ZC', 'ES', '1990'), plant('LD', 'BE', '1975')]);
const second = fileWith([plant('QA', 'PT', '1982'), plant('ZC', 'ES', '1991'), plant('HJ', 'FR', '1986')], {
  note: 'second printing',
});
const serve = (text: string) => host.on('/velmar.json', file('application/json', text));

const fetchFrom = async (typed: string) => {
  await page.getByLabel('Address of the file').fill(typed);
  await button('Fetch and look').click();
};
const files = () =>
  page.evaluate(async () =>
    Object.keys(await chrome.storage.local.get(null)).filter((key) => key.startsWith('maker-')),
  );
const years = (code: string): Locator => page.locator('.file-changes').locator(`[data-change^="plants ${code} "]`);
const plants = () => page.locator('section.entries', { has: page.getByRole('heading', { name: /^Workshops/ }) });
const codes = () =>
  plants()
    .getByLabel('Code', { exact: true })
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));

describe('a maker file as pasted text', () => {
  it('is opened from anywhere on the page, and what is cut says so and opens nothing', async () => {
    const paste = (text: string) =>
      page.evaluate((pasted) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData('text/plain', pasted);
        document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
      }, text);
    await paste(first.slice(0, 60));
    await alert()
      .getByText(/^Pasted text, the file: .*not JSON/)
      .waitFor();
    expect(await files()).toEqual([]);
    await paste(first);
    await page.getByText('Complete: listings are read with it.').waitFor();
    await button('Back to the list').click();
    await page.getByText('Written by A. Keeper. Licence: CC0-1.0.').waitFor();
    await button('Delete').click();
    await page.getByText('You have none yet.').waitFor();
  });

  it('is opened from its field as well', async () => {
    await page.getByText('From an address, or as pasted text').click();
    await page.getByLabel(/^Text of the file/).fill(first);
    await button('Open this text').click();
    await page.getByText('Complete: listings are read with it.').waitFor();
    await button('Back to the list').click();
    await button('Delete').click();
    await page.getByText('You have none yet.').waitFor();
  });
});

describe('a maker file at an address', () => {
  it('that brings no file says why, and keeps nothing', async () => {
    await page.getByText('From an address, or as pasted text').click();
    host.on('/away.json', leadTo(address('/velmar.json')));
    host.on('/page.json', file('text/html', '<!doctype html><title>Makers</title>'));
    host.on('/newer.json', file('application/json', '{"format": 3, "maker": "Velmar Lane"}'));
    host.on('/half.json', file('application/json', first.slice(0, 80)));
    host.on('/cut.json', (_, response) => {
      response.writeHead(200, { 'content-length': Buffer.byteLength(first) });
      response.write(first.slice(0, 80), () => response.destroy());
    });
    const given = new Promise<number>((tell) => host.on('/endless.json', withoutEnd(tell)));
    const refused: [string, RegExp][] = [
      ['http://makers.example/velmar.json', /not an encrypted one/],
      ['nothing at all', /no web address/],
      [address('/nowhere.json'), /no file at the address/],
      [address('/away.json'), /leads on to another/],
      [address('/page.json'), /shows a page, not a file/],
      [address('/newer.json'), /format 3/],
      [address('/half.json'), /not JSON/],
      [address('/cut.json'), /broke off before its end/],
      [address('/endless.json'), /More than 5 MB/],
    ];
    for (const [typed, says] of refused) {
      await fetchFrom(typed);
      await expect
        .poll(() => alert().allTextContents(), { timeout: 40_000 })
        .toContainEqual(expect.stringMatching(says));
    }
    expect(await given).toBeGreaterThan(5_000_000);
    expect(host.asked.some(({ path }) => path === '/velmar.json')).toBe(false);
    expect(await files()).toEqual([]);
  });

  it('is looked at with its licence, authors and hash before anything of it is kept', async () => {
    serve(first);
    await fetchFrom(address('/velmar.json'));
    await page.getByRole('heading', { name: 'A file on Velmar Lane. Nothing of it is kept yet.' }).waitFor();
    await page.getByText('Written by A. Keeper. Licence: CC0-1.0.').waitFor();
    await page.getByText(`SHA-256 ${sha256(first)}`).waitFor();
    expect(await files()).toEqual([]);
    expect(await violations(page)).toEqual([]);
    await button('Use this file').click();
    await page.getByText('Complete: listings are read with it.').waitFor();
    await page.getByText('Nothing is waiting.').waitFor();
    expect(await codes()).toEqual(['QA', 'ZC', 'LD']);
  });

  it('tells what changed there entry by entry, own changes apart, and uses what is chosen', async () => {
    // The buyer knows better of one workshop, and adds another.
    const period = plants().getByLabel(/^Used/).first();
    await period.fill('1979');
    await button('Add a workshop').click();
    await plants().getByLabel('Code', { exact: true }).last().fill('XX');
    await plants().getByLabel('Country (ISO code)').last().fill('IT');
    await plants().getByLabel(/^Used/).nth(6).fill('1999');
    await page.getByText('Complete: listings are read with it.').waitFor();
    serve(second);
    await button('Look for changes now').click();
    await page.getByText('5 changes wait; not used yet.').waitFor();
    await years('QA').getByText('Workshop QA in Portugal: you changed it too').waitFor();
    expect(await years('QA').locator('label').allTextContents()).toEqual([
      'Mine: Used: 1979 – still ',
      'From the address (changed): Used: 1982 – still ',
    ]);
    expect(await years('ZC').textContent()).toBe('Workshop ZC in Spain: changedUsed: 1990 – still → 1991 – still ');
    expect(await years('LD').textContent()).toContain('Workshop LD in Belgium: removed');
    expect(await years('HJ').textContent()).toContain('Workshop HJ in France: added');
    await page.getByText(`SHA-256 ${sha256(second)}`).waitFor();
    expect(await codes()).toEqual(['QA', 'ZC', 'LD', 'XX']);
    expect(await violations(page)).toEqual([]);
    expect(await overTheEdge(page)).toEqual([]);
    await years('LD').getByRole('checkbox').uncheck();
    await button('Use 3 changes').click();
    await page.getByText('3 changes used.').waitFor();
    expect(await codes()).toEqual(['QA', 'ZC', 'LD', 'XX', 'HJ']);
    expect(await period.inputValue()).toBe('1979');
    // What was left is told again, what was decided is not.
    await page.getByText('1 change waits').waitFor();
    expect(await page.locator('[data-change]').count()).toBe(1);
  });

  it('is undone after a reload, but for what was changed since', async () => {
    await plants().getByLabel(/^Used/).nth(8).fill('1985');
    await page.getByText('Complete: listings are read with it.').waitFor();
    await page.reload();
    await button('Undo the last update').click();
    await page.getByText('The last update is undone, but for 1 entry that you changed since.').waitFor();
    expect(await codes()).toEqual(['QA', 'ZC', 'LD', 'XX', 'HJ']);
    expect(await plants().getByLabel(/^Used/).nth(2).inputValue()).toBe('1990');
    await page.getByText(`SHA-256 ${sha256(first)}`).waitFor();
  });

  it('that turns into another maker, goes away or cannot be reached changes nothing', async () => {
    const before = await page.evaluate(() => chrome.storage.local.get(null));
    const drafts = (stored: Record<string, unknown>) =>
      Object.entries(stored).filter(([key]) => key.startsWith('maker-draft-'));
    serve(first.replace('Velmar Lane', 'Tessaro Vell'));
    await button('Look for changes now').click();
    await alert()
      .getByText(/is now on Tessaro Vell, not on Velmar Lane/)
      .waitFor();
    host.on('/velmar.json', (_, response) => void response.writeHead(404).end());
    await button('Look for changes now').click();
    await alert()
      .getByText(/no file at the address/)
      .waitFor();
    await browser.context.setOffline(true);
    await button('Look for changes now').click();
    await alert()
      .getByText(/not connected/)
      .waitFor();
    await browser.context.setOffline(false);
    expect(drafts(await page.evaluate(() => chrome.storage.local.get(null)))).toEqual(drafts(before));
  });

  const yesterday = () =>
    page.evaluate(async () => {
      for (const [key, value] of Object.entries(await chrome.storage.local.get(null)))
        if (key.startsWith('maker-origin-'))
          await chrome.storage.local.set({ [key]: { ...(value as object), asked: '2020-01-01T00:00:00.000Z' } });
    });
  const asked = () => host.asked.filter(({ path }) => path === '/velmar.json').length;

  it('is asked for once a day when that is wanted, and never otherwise', async () => {
    serve(second);
    await yesterday();
    let before = asked();
    await page.goto(browser.extensionUrl('watchlist.html#start'));
    await page.getByText('You allowed reading from:').waitFor();
    await page.goto(browser.extensionUrl('watchlist.html#makers'));
    await page.reload();
    await page.getByText('From 127.0.0.1.').waitFor();
    expect(asked()).toBe(before);
    await button('Edit').click();
    await page.getByLabel(/once a day/).check();
    await page.waitForFunction(async () =>
      Object.values(await chrome.storage.local.get(null)).some((value) => (value as { daily?: boolean }).daily),
    );
    before = asked();
    await page.reload();
    await page.getByText(/^\d changes? waits?/).waitFor();
    await expect.poll(asked).toBe(before + 1);
    await page.waitForFunction(async () =>
      Object.values(await chrome.storage.local.get(null)).some(
        (value) => (value as { asked?: string }).asked?.startsWith('2020') === false,
      ),
    );
    await page.reload();
    await page.getByText(/^\d changes? waits?/).waitFor();
    expect(asked()).toBe(before + 1);
  });

  it('is asked for once a day by the panel of a listing too, when that is read', async () => {
    host.on('/listing', file('text/html', '<!doctype html><html lang="en"><main><h1>Ledger</h1><p>€140.00</p></main>'));
    const { page: listing, tabId } = await openTab(browser, address('/listing'));
    const open = async () => {
      const panel = await openPanel(browser, tabId);
      await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 60_000 });
      return panel;
    };
    const before = asked();
    await (await open()).close();
    await yesterday();
    expect(asked()).toBe(before);
    const panel = await open();
    await expect.poll(asked).toBe(before + 1);
    await page.waitForFunction(async () =>
      Object.values(await chrome.storage.local.get(null)).every(
        (value) => !(value as { asked?: string }).asked?.startsWith('2020'),
      ),
    );
    await panel.close();
    await (await open()).close();
    expect(asked()).toBe(before + 1);
    await listing.close();
    await page.bringToFront();
  });

  it('is forgotten with its file, and comes back with it', async () => {
    await button('Back to the list').click();
    await button('Delete').click();
    await page.getByText('You have none yet.').waitFor();
    expect(await files()).toEqual([]);
    await button('Undo').click();
    await page.getByText('From 127.0.0.1.').waitFor();
  });
});

describe('an address that the buyer does not allow', () => {
  it('is not asked', async () => {
    const before = host.asked.length;
    await page.evaluate(() => {
      chrome.permissions.request = async () => false;
    });
    await page.getByText('From an address, or as pasted text').click();
    await fetchFrom(address('/velmar.json'));
    await alert()
      .getByText(/was not allowed/)
      .waitFor();
    expect(host.asked).toHaveLength(before);
  });
});
