import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Browser, launch } from './launch';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());

/** The teacher of a new file, open, with these codes in it. */
async function openTeacher(codes: string): Promise<Page> {
  const page = await browser.context.newPage();
  await page.goto(browser.extensionUrl('watchlist.html#makers'));
  await page.getByRole('button', { name: 'New file' }).click();
  await page.getByLabel('Maker', { exact: true }).fill('Tessaro Vell');
  await page.getByText('Work out how the codes are built').click();
  await page.getByLabel('Known codes, one a row').fill(codes);
  return page;
}
const find = (page: Page) => page.getByRole('button', { name: 'Find layouts' });

/** Workshop, month, year, as twelve pieces of twelve years have them; one row in words. */
const twelve = [
  'KV0484, 1984-04, BE',
  'HJ1185, 1985-11, FR',
  'KV0287, 1987, BE',
  'ZM0788, July 1988, ES',
  'HJ1290, 1990-12, FR',
  'KV0991, about 1991',
  'ZM0393, 1993-03',
  'KV1094, bought 1995, BE',
  'HJ0696, 1996-06',
  'ZM0198, 1998-01, ES',
  'KV0899, 1990s, BE',
  'HJ0501, 2001-05',
].join('\n');

/** So many long codes that a search takes seconds. */
const many = Array.from({ length: 200 }, (_, at) => {
  const year = 1970 + (at % 30);
  const code = `${String((at * 7919) % 100_000).padStart(5, '0')}${String((at % 12) + 1).padStart(2, '0')}${String(year % 100)}${String((at * 104_729_003) % 10_000_000_000).padStart(10, '0')}`;
  return `${code}, ${year}`;
}).join('\n');

describe('the teacher in the browser', () => {
  it('answers on twelve codes from a worker that is gone afterwards', async () => {
    const page = await openTeacher(twelve);
    const started = page.waitForEvent('worker');
    await find(page).click();
    const worker = await started;
    const gone = new Promise((resolve) => worker.once('close', resolve));
    await page.getByText('Explains 12 of 12 codes.').first().waitFor();
    await gone;
    expect(await page.locator('.learn-found li.entry').first().getByRole('listitem').allTextContents()).toEqual([
      'workshop 2',
      'month 2',
      'year 2',
    ]);
    await page.close();
  });

  it('leaves the page its frames while it works, and ends with its worker when the codes change', async () => {
    const page = await openTeacher(many);
    await page.getByText('200 rows understood').waitFor();
    const started = page.waitForEvent('worker');
    await find(page).click();
    const worker = await started;
    const gone = new Promise((resolve) => worker.once('close', resolve));
    const frames = await page.evaluate(async () => {
      const isBusy = () => document.querySelector('.learn [aria-busy="true"]') !== null;
      let seen = 0;
      while (isBusy() && seen < 30) {
        await new Promise((resolve) => requestAnimationFrame(resolve));
        seen++;
      }
      return seen;
    });
    expect(frames).toBe(30);
    await page.getByLabel('Known codes, one a row').press('End');
    await page.keyboard.type('\n');
    await page.getByText('The search was ended, because the codes changed.').waitFor();
    await gone;
    await page.close();
  });

  it('answers on the page itself where the browser gives no worker, and says so', async () => {
    const page = await openTeacher(twelve);
    await page.evaluate(() => {
      Object.assign(globalThis, {
        Worker: class {
          constructor() {
            throw new Error('workers are off here');
          }
        },
      });
    });
    await find(page).click();
    await page.getByText('Explains 12 of 12 codes.').first().waitFor();
    await page.getByText('The browser gave the search no room of its own (workers are off here)').waitFor();
    await page.close();
  });
});
