import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { overTheEdge, violations } from './axe';
import { measure, openAged, openLetters } from './on-bench';
import { openStage, type Stage } from './panel-states';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
}, 60_000);
afterAll(async () => {
  await stage?.close();
});

/** The photo, straightened or not, and what lies on it are cut off by the frame that they lie in; all else keeps to the window, and to the rules. */
async function keepsToItsRoom(page: Page): Promise<void> {
  expect(await violations(page)).toEqual([]);
  for (const width of [320, 400, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    const over = await overTheEdge(page);
    expect(
      over.filter((name) => !/^IMG\.$|bench-photo|overlay|mark-number|handle|svg|poly|path/.test(name)),
      `${width} px`,
    ).toEqual([]);
  }
}

it('a line of characters is laid by keyboard alone and stands beside those of three kept cases', async () => {
  const page = await openLetters(stage, 3);
  const beside = page.locator('.mark-sheet[data-mark="1"] .letters-beside');
  await beside.locator('tbody tr').nth(5).waitFor();
  expect(await beside.locator('tbody th').allTextContents()).toEqual(['L', 'E', 'A', 'T', 'H', 'R']);
  await beside.getByText(/those of 3 known lines/).waitFor();
  await keepsToItsRoom(page);
  await page.close();
}, 240_000);

it('a place that age changed is laid by keyboard alone, and speaks against a piece that is called new', async () => {
  const page = await openAged(stage);
  expect(Number.parseFloat((await measure(page, 2, 'darkening').textContent()) ?? '')).toBeGreaterThan(10);
  await page.locator('[data-check="unused-against-photo"][data-kind=doubt]').waitFor();
  await keepsToItsRoom(page);
  await page.close();
}, 120_000);
