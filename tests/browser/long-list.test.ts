import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sampleCase } from '../unit/watch/sample-case';
import { type Browser, launch } from './launch';
import { putCases } from './many-cases';

const count = 500;
let browser: Browser;
let list: Page;
beforeAll(async () => {
  browser = await launch();
  list = await browser.context.newPage();
  await list.goto(browser.extensionUrl('watchlist.html'));
  await list.getByText('Nothing saved yet.').waitFor();
  const kase = sampleCase();
  const price = { kind: 'sale' as const, minor: 1_234_500, exponent: 2, currency: 'EUR', currencies: [] };
  await putCases(list, count, {
    ...kase,
    listing: { ...kase.listing, price: [{ value: price, origin: 'json-ld', where: 'offers', confidence: 1 }] },
    maker: 'Ondrasse',
    outcomes: [{ outcome: 'cannot-tell', check: 'code-fits-maker', why: { reason: 'no-stamp-read', data: {} } }],
  });
  await list.reload();
  await list.locator('.case-row').first().waitFor();
});
afterAll(async () => {
  await browser?.close();
});

const focusedTitle = () => list.evaluate(() => document.activeElement?.textContent ?? '');
const rowOf = (title: string) =>
  list.locator('.case-row', { has: list.getByRole('link', { name: title, exact: true }) });

describe('a list of 500 cases', () => {
  it('has only the rows in sight in the page, and says of each which of how many it is', async () => {
    const nodes = await list.evaluate(() => document.querySelectorAll('*').length);
    expect(nodes).toBeLessThan(1500);
    const places = await list
      .locator('.long-list > li')
      .evaluateAll((rows) => rows.map((row) => [row.getAttribute('aria-posinset'), row.getAttribute('aria-setsize')]));
    expect(places.length).toBeGreaterThan(5);
    expect(places).toEqual(places.map((_, index) => [String(index + 1), String(count)]));
  });

  it('draws the rows that are scrolled to', async () => {
    await list.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await rowOf(`Ondrasse Carryall ${count}`).waitFor();
    expect(await list.locator('.case-row').count()).toBeLessThan(40);
    await list.evaluate(() => scrollTo(0, 0));
    await rowOf('Ondrasse Carryall 1').waitFor();
  });

  it('is walked through by keys, and the focus survives being scrolled out of sight', async () => {
    await list.getByRole('link', { name: 'Ondrasse Carryall 1', exact: true }).focus();
    await list.keyboard.press('ArrowDown');
    expect(await focusedTitle()).toBe('Ondrasse Carryall 2');
    await list.keyboard.press('End');
    await expect.poll(focusedTitle).toBe(`Ondrasse Carryall ${count}`);
    await list.keyboard.press('ArrowUp');
    await expect.poll(focusedTitle).toBe(`Ondrasse Carryall ${count - 1}`);
    await list.evaluate(() => scrollTo(0, 0));
    await rowOf('Ondrasse Carryall 1').waitFor();
    expect(await focusedTitle()).toBe(`Ondrasse Carryall ${count - 1}`);
    await list.keyboard.press('Home');
    await expect.poll(focusedTitle).toBe('Ondrasse Carryall 1');
  });

  it('is walked through by Tab, one control after the other', async () => {
    await list.getByRole('link', { name: 'Ondrasse Carryall 1', exact: true }).focus();
    for (let row = 2; row <= 30; row++) {
      for (let step = 0; step < 5; step++) await list.keyboard.press('Tab');
      await expect.poll(focusedTitle).toBe(`Ondrasse Carryall ${row}`);
    }
  });

  it('returns from a case to its row', async () => {
    await list.getByRole('link', { name: 'Ondrasse Carryall 30', exact: true }).click();
    const back = list.getByRole('link', { name: 'Back to the list' });
    await back.waitFor();
    await expect.poll(focusedTitle).toBe('Ondrasse Carryall 30');
    await back.click();
    await rowOf('Ondrasse Carryall 30').waitFor();
    await expect.poll(focusedTitle).toBe('Ondrasse Carryall 30');
  });

  it('leaves the focus on the next row after a deletion, and changes no other row', async () => {
    await rowOf('Ondrasse Carryall 30').getByRole('button', { name: 'Delete' }).click();
    await expect.poll(focusedTitle).toBe('Ondrasse Carryall 31');
    await list.getByText(`${count - 1} cases`, { exact: true }).waitFor();
    await list.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(focusedTitle).toBe('Ondrasse Carryall 30');
    await list.getByText(`${count} cases`, { exact: true }).waitFor();
  });

  it('finds rows that are not drawn', async () => {
    await list.getByRole('searchbox', { name: 'Find' }).fill('carryall 477');
    await list.getByText(`1 of ${count} cases`).waitFor();
    expect(await list.locator('.case-row h2').allTextContents()).toEqual(['Ondrasse Carryall 477']);
    await list.getByRole('searchbox', { name: 'Find' }).fill('');
  });

  it.each([280, 320, 400, 600, 880])('cuts no control of a row off at %i px', async (width) => {
    await list.setViewportSize({ width, height: 800 });
    await list.evaluate(() => scrollTo(0, 0));
    await rowOf('Ondrasse Carryall 1').waitFor();
    const cut = await list.locator('.case-row').evaluateAll((rows) =>
      rows.flatMap((row) => {
        const edge = row.getBoundingClientRect();
        const inside = [...row.querySelectorAll('a, button, select, p')].map((one) => one.getBoundingClientRect());
        return inside.filter((one) => one.bottom > edge.bottom + 0.5 || one.right > edge.right + 0.5).length;
      }),
    );
    expect(cut.filter((number) => number > 0)).toEqual([]);
  });
});

describe('a note that is open in two windows', () => {
  it('keeps both texts and says so', async () => {
    const [first, second] = [list, await browser.context.newPage()];
    for (const window of [first, second]) {
      await window.goto(browser.extensionUrl('watchlist.html#case=case-7'));
      await window.getByRole('textbox', { name: 'Note' }).waitFor();
    }
    await first.getByRole('textbox', { name: 'Note' }).fill('asked for the lining');
    await second.getByRole('textbox', { name: 'Note' }).fill('seller answers in March');
    await first.getByRole('button', { name: 'Save note' }).click();
    await first.getByText('Note saved.').waitFor();
    await second.getByRole('button', { name: 'Save note' }).click();
    await second.getByText('Another window had changed it meanwhile').waitFor();
    expect(await second.locator('.other-note-text').textContent()).toBe('asked for the lining');
    await second.getByRole('button', { name: 'Put it under my note' }).click();
    await second.locator('.other-notes').waitFor({ state: 'detached' });
    await expect
      .poll(() => second.getByRole('textbox', { name: 'Note' }).inputValue())
      .toBe('seller answers in March\n\nasked for the lining');
    await second.close();
  });
});
