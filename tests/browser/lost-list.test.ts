import { cp, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { type Browser, launch } from './launch';
import { putCases } from './many-cases';

let browser: Browser;
afterEach(async () => {
  await browser?.close();
});

/** Where the browser keeps the database of the extension, in the profile. */
const filesOf = ({ profile, id }: Browser) =>
  join(profile, 'Default', 'IndexedDB', `chrome-extension_${id}_0.indexeddb.leveldb`);

async function openList(): Promise<Page> {
  const list = await browser.context.newPage();
  await list.goto(browser.extensionUrl('watchlist.html'));
  await list.getByRole('button', { name: 'Export as a file' }).waitFor();
  return list;
}

/** Changes the first case and waits until that is known outside the database too. */
async function changeFirst(list: Page, status: string): Promise<void> {
  const generation = () =>
    list.evaluate(async () => {
      const { 'watch-list-mark': mark } = await chrome.storage.local.get('watch-list-mark');
      return (mark as { generation?: number } | undefined)?.generation ?? 0;
    });
  const before = await generation();
  await list.locator('.case-row').first().getByLabel('Status').selectOption(status);
  await expect.poll(generation).toBeGreaterThan(before);
}

async function filledList(count: number): Promise<void> {
  browser = await launch();
  const list = await openList();
  await putCases(list, count);
  await list.reload();
  await list.locator('.case-row').first().waitFor();
  await changeFirst(list, 'asked');
}

const warning = (list: Page) => list.getByRole('alert').filter({ hasText: 'Import your last export.' });

describe('a list whose files are no longer what they were', () => {
  it('says so when they were damaged, also after the next change', async () => {
    await filledList(4);
    await browser.end();
    for (const file of await readdir(filesOf(browser))) await writeFile(join(filesOf(browser), file), 'damaged');
    browser = await launch({ profile: browser.profile });
    const list = await openList();
    await warning(list).getByText('It held 4 records when it was last changed.').waitFor();
    await putCases(list, 2);
    await list.reload();
    await list.locator('.case-row').first().getByRole('button', { name: 'Delete' }).click();
    await list.getByText('Deleted: Ondrasse Carryall 1').waitFor();
    await list.reload();
    await warning(list).getByText('The browser has removed the watch list that was here.').waitFor();
  });

  it('says so when an older copy stands in their place', async () => {
    await filledList(3);
    await browser.end();
    const copy = `${filesOf(browser)}-copy`;
    await cp(filesOf(browser), copy, { recursive: true });
    browser = await launch({ profile: browser.profile });
    await changeFirst(await openList(), 'bought');
    await browser.end();
    await rm(filesOf(browser), { recursive: true });
    await cp(copy, filesOf(browser), { recursive: true });
    browser = await launch({ profile: browser.profile });
    const list = await openList();
    await warning(list).getByText('The watch list is an older copy of itself').waitFor();
    await list.getByRole('button', { name: 'I know: go on with this list' }).click();
    await warning(list).waitFor({ state: 'detached' });
    await list.reload();
    await list.locator('.case-row').first().waitFor();
    expect(await warning(list).count()).toBe(0);
  });
});
