import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

let market: Market;
let browser: Browser;
let panel: Page;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch();
  const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-35-new.html`);
  await clickToolbar(browser, page);
  panel = await openPanel(browser, tabId);
  await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 300_000 });
  await panel.getByText('Photos', { exact: true }).click();
  await panel.getByRole('button', { name: 'Look at photo 2 by hand' }).click();
  await panel.locator('.by-hand summary', { hasText: 'Measured in this photo' }).click();
}, 400_000);
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

const shareOf = async (handle: Locator, axis: 'left' | 'top') =>
  Number.parseFloat(await handle.evaluate((one, side) => (one as HTMLElement).style[side as 'left'], axis));

it('a hand adds what it sees, places it by pointer and keyboard, and it stands after a new reading', async () => {
  const seen = panel.locator('.by-hand');
  await seen.getByLabel('Add what you see').selectOption('watermark');
  await seen.getByLabel('It reads').fill('cellar-finds.example');
  await seen.getByRole('button', { name: 'Place it on the photo' }).click();

  const whole = seen.getByRole('slider', { name: 'Web address in the photo, all of it' });
  // In the middle of the window: bars at its edges would lie over it.
  await whole.evaluate((one) => one.scrollIntoView({ block: 'center' }));
  const box = (await whole.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await panel.mouse.move(x, y);
  await panel.mouse.down();
  await panel.mouse.move(x + 40, y + 30, { steps: 3 });
  await panel.mouse.up();
  const dragged = await shareOf(whole, 'left');
  expect(dragged).toBeGreaterThan(52);
  await whole.press('Shift+ArrowRight');
  expect(await shareOf(whole, 'left')).toBeCloseTo(dragged + 2, 1);
  await seen.getByRole('button', { name: 'It lies here' }).click();

  const row = seen.locator('li', { hasText: 'cellar-finds.example' });
  expect(await row.textContent()).toContain('set by you');
  await panel.locator('.finding[data-check=photo-watermark]').first().waitFor({ state: 'attached' });

  await seen.getByRole('button', { name: 'Read this part' }).click();
  await seen
    .locator('[role=status] p')
    .filter({ hasText: /found|No / })
    .waitFor({ timeout: 120_000 });
  await row.waitFor();
  await row.getByRole('button', { name: /^Undo/ }).click();
  await row.waitFor({ state: 'detached' });
  await panel.locator('.finding[data-check=photo-watermark]').waitFor({ state: 'detached' });
}, 200_000);

it('what a hand leaves out is struck, and comes back', async () => {
  const seen = panel.locator('.by-hand');
  const name = /^Leave out: Lightness of the ground/;
  await seen.getByRole('button', { name }).click();
  await seen.locator('li s', { hasText: 'Lightness of the ground' }).waitFor();
  await seen.getByRole('button', { name: 'Undo: Lightness of the ground' }).click();
  await seen.getByRole('button', { name }).waitFor();
});
