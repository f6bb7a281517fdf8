import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Browser, launch } from './launch';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await browser.context.newPage();
  await page.setViewportSize({ width: 900, height: 900 });
  await page.goto(browser.extensionUrl('watchlist.html#makers'));
});
afterAll(async () => {
  await browser?.close();
});

const button = (name: string) => page.getByRole('button', { name, exact: true });

describe('every field of a maker file', () => {
  const section = (name: RegExp) =>
    page.locator('section.entries', { has: page.getByRole('heading', { name, level: 3 }) }).first();
  const complete = () => page.getByText('Complete: listings are read with it.').waitFor();
  let written: Record<string, unknown>;

  it('sets a letter cycle, a dated serial table with a gap and an open end, and a check character by clicking', async () => {
    await button('New file').click();
    await page.getByLabel('Maker', { exact: true }).fill('Velmar Works');
    await button('Add a code system').click();
    const systems = section(/^Code systems/);
    await systems.getByRole('button', { name: 'year', exact: true }).click();
    const settings = systems.locator('.slot-settings');
    await settings.getByLabel('Written as').selectOption('a letter');
    await settings.getByText('Skipped: I O Q').waitFor();
    await settings.getByLabel('Letters in order').fill('ABCD-');
    await settings.locator('.field-problems').getByText('capital letters or digits').waitFor();
    // From the list of all that is to correct back to the field, by keyboard, though its slot is folded away again.
    await systems.locator('.slots button').click();
    await settings.waitFor({ state: 'detached' });
    await page.getByText('What is to correct').press('Enter');
    await button('code system 1, slot 1, letters').press('Enter');
    const letters = settings.getByLabel('Letters in order');
    await letters.waitFor();
    await page.waitForFunction(() => document.activeElement?.getAttribute('data-place')?.endsWith('.letters'));
    expect(await letters.inputValue()).toBe('ABCD-');
    await button('Undo: change code system 1, slot 1, letters').click();
    await settings.getByLabel('inside a shape, written in brackets: (A)').check();
    await settings.getByLabel('Written as').selectOption('two digits');
    await systems.getByRole('button', { name: 'running number' }).click();
    await settings.getByLabel('At most').fill('4');
    for (const [first, last] of [
      ['1', '400'],
      ['500', ''],
    ]) {
      await settings.getByRole('button', { name: 'Add a range of numbers' }).click();
      const row = settings.locator('.entry').last();
      await row.getByLabel('First number').fill(first!);
      await row.getByLabel('Last number').fill(last!);
    }
    await settings.getByText('Numbers 401 to 499 stand in no range').waitFor();
    await systems.getByRole('button', { name: 'check character' }).click();
    await settings.getByLabel('Rule').selectOption('mod 11 with weights, X for 10');
    await settings.getByLabel('Weights').fill('2, 3, 4');
    await button('Add another layout of the same period').click();
    await systems.getByRole('button', { name: 'quarter' }).last().click();
    await settings.getByLabel('Written as').selectOption('a letter');
    await settings.getByLabel('Four letters, first quarter first').fill('WXYZ');
    await button('Remove layout 2').click();
    await button('Undo: remove layout 2').click();
  });

  it('keeps several periods of a plant, all of a model, words against a material, and habits that are denied', async () => {
    await button('Add a workshop').click();
    const plants = section(/^Workshops/);
    await plants.getByLabel('Code', { exact: true }).fill('QA');
    await plants.getByLabel('Country (ISO code)').fill('PT');
    await plants.getByRole('button', { name: 'Add a period' }).click();
    await plants.getByLabel('Used, period 2, first date').fill('20');
    await plants.locator('.field-problems').getByText('a date as 1994').waitFor();
    await plants.getByLabel('Used, period 2, first date').fill('2004');
    await plants.getByLabel('Used, period 1, still').fill('1999');
    await button('Add a fact').click();
    const facts = section(/^How it is made/);
    await facts.getByLabel('Is', { exact: true }).fill('olive twill');
    await facts.getByLabel('Also called, one a line').fill('green twill\nolive cotton');
    await facts.getByLabel('Words that speak against it, one a line').fill('suede');
    await facts.getByLabel('Only on these models, one a line').fill('Tote 30');
    await facts.getByLabel('Sources, one a line').first().fill('catalogue');
    await button('Add a model').click();
    const models = section(/^Models/);
    await models.getByLabel('Name', { exact: true }).fill('Tote 30');
    await models.getByLabel('Made, first date').fill('1991');
    await models.getByLabel('lock').check();
    await models.getByRole('button', { name: 'Remove the size' }).click();
    await page.getByLabel('Has outlets').selectOption('no');
    await page.reload();
    const [download] = await Promise.all([page.waitForEvent('download'), button('Export').click()]);
    written = JSON.parse(readFileSync(await download.path(), 'utf8'));
    expect(written).toMatchObject({
      codeSystems: [
        {
          layouts: [
            [
              { year: 2 },
              {
                serial: { min: 4, max: 4 },
                table: [
                  { first: 1, last: 400 },
                  { first: 500, last: null },
                ],
              },
              { check: 'mod11', weights: [2, 3, 4] },
            ],
            [{ quarter: 'WXYZ' }],
          ],
        },
      ],
      plants: [
        {
          code: 'QA',
          used: [
            ['1990', '1999'],
            ['2004', null],
          ],
        },
      ],
      construction: [{ is: 'olive twill', also: ['green twill', 'olive cotton'], not: ['suede'], models: ['Tote 30'] }],
      models: [{ name: 'Tote 30', runs: [{ made: ['1991', null] }], parts: ['lock'] }],
      trade: { outlets: false },
    });
    expect(Reflect.has((written.models as { runs: object[] }[])[0]!.runs[0]!, 'size')).toBe(false);
    // Nothing of the letter cycle is left in the year that is now two digits.
    expect(JSON.stringify(written)).toContain('[{"year":2},');
  });

  it('draws construction by part and period, each bar leading to its fields by keyboard, down to 320 px', async () => {
    await page.setViewportSize({ width: 320, height: 800 });
    const axis = page.getByRole('region', { name: 'By part and period' });
    await axis.getByRole('button', { name: 'olive twill, from 1990 on' }).press('Enter');
    expect(await page.evaluate(() => document.activeElement?.closest('.entry')?.id)).toBe('entries-construction-0');
    const drawn = await axis.locator('rect').evaluate((bar) => bar.getBoundingClientRect().width);
    expect(drawn).toBeGreaterThan(100);
    expect(await page.locator('.maker-editor [style]').count()).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    await page.setViewportSize({ width: 900, height: 900 });
  });

  it('takes several dropped files, and joins each with the file of its maker in turn', async () => {
    await button('Back to the list').click();
    const blank = (maker: string, note: string) => ({ format: 1, maker, note });
    const drop = async (...dropped: object[]) => {
      const data = await page.evaluateHandle(
        (texts) => {
          const transfer = new DataTransfer();
          for (const [at, text] of texts.entries()) transfer.items.add(new File([text], `${at}.json`));
          return transfer;
        },
        dropped.map((file) => JSON.stringify(file)),
      );
      await page.locator('section[aria-label="Maker files"]').dispatchEvent('drop', { dataTransfer: data });
    };
    await drop(blank('Maker One', 'a'), blank('Maker Two', 'a'));
    await button('Back to the list').click();
    await drop(blank('Maker One', 'b'), blank('Maker Two', 'b'), { format: 1, maker: '' });
    await page.getByRole('heading', { name: 'Two files of Maker One' }).waitFor();
    await page.getByRole('alert').getByText('2.json, maker').waitFor();
    await page.getByLabel(/^Imported/).check();
    await button('Merge').click();
    await page.getByRole('heading', { name: 'Two files of Maker Two' }).waitFor();
    await button('Merge').click();
    await button('Undo: join with another file').waitFor();
    await complete();
  });
});
