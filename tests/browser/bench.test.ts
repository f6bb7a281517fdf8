import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { stitchScene } from '../measure/stitch-truth';
import { overTheEdge, violations } from './axe';
import { type Browser, launch } from './launch';
import { bring, jpegOf, measure } from './on-bench';

/** A drawn row of stitches, whose count is known. */
const scene = await stitchScene(502, 'clear', true);
const { image, line, count } = scene;
const jpeg = await jpegOf(image);

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch({ window: { width: 1280, height: 1000 } });
  page = await browser.context.newPage();
  await page.goto(browser.extensionUrl('watchlist.html#photo'));
  await page
    .locator('input[type=file]')
    .setInputFiles(['row.jpg', 'again.jpg'].map((name) => ({ name, mimeType: 'image/jpeg', buffer: jpeg })));
  await page.getByRole('button', { name: 'Look at photo 1 by hand' }).click({ timeout: 200_000 });
  await page.getByRole('button', { name: 'Measure on this photo' }).click();
}, 300_000);
afterAll(async () => {
  await browser?.close();
});

const at = async (which: Page, name: RegExp) =>
  which
    .getByRole('slider', { name })
    .first()
    .evaluate((one) => ({ left: Number.parseFloat(one.style.left), top: Number.parseFloat(one.style.top) }));

describe('the bench', () => {
  it('is used by keyboard alone: a mark is laid, moved to the row by pixels, and the row is counted', async () => {
    const button = page.getByRole('button', { name: 'Row of stitches' });
    await button.focus();
    await page.keyboard.press('Enter');
    // The keyboard is on the new mark's first handle.
    await page.locator('.bench-stage .handle:focus').waitFor();
    await bring(page, /1 Row of stitches, start/, line[0], image);
    await bring(page, /1 Row of stitches, end/, line[1], image);
    const told = measure(page, 1, 'count').filter({ hasText: new RegExp(`^${count} ±`) });
    await told.waitFor();
  }, 120_000);

  it('undoes a step, and takes a mark away and back', async () => {
    const before = await at(page, /1 Row of stitches, end/);
    await page.getByRole('slider', { name: /1 Row of stitches, end/ }).press('Shift+ArrowLeft');
    expect((await at(page, /1 Row of stitches, end/)).left).toBeLessThan(before.left);
    const undo = page.getByRole('button', { name: 'Undo the last step' });
    await undo.click();
    await expect.poll(async () => (await at(page, /1 Row of stitches, end/)).left).toBe(before.left);
    await page.getByRole('button', { name: /^Remove: 1 Row/ }).click();
    await page.locator('.mark-sheet').waitFor({ state: 'detached' });
    await undo.click();
    await measure(page, 1, 'count').waitFor();
  });

  it('says why a colour is not told, and tells a length in millimetres once a ruler has its length', async () => {
    await page.getByRole('button', { name: 'Colour', exact: true }).click();
    const colour = page.locator('.mark-sheet[data-mark="2"] [data-what="lab"]');
    await colour.filter({ hasText: 'no white on this photo' }).waitFor();
    await page.getByRole('button', { name: 'Ruler', exact: true }).click();
    await page.locator('.mark-sheet[data-mark="3"]').filter({ hasText: 'say the length' }).waitFor();
    await page.getByLabel('Or a known object').selectOption('cardLong');
    await measure(page, 3, 'scale').waitFor();
    await measure(page, 1, 'stitches-per-cm').waitFor();
  });

  it('shows its relief, lit from a side, and the photo again; what is measured stays', async () => {
    const tools = page.locator('.bench details', { hasText: 'Turn and light' }).first();
    await tools.locator('summary').press('Enter');
    const photo = page.locator('.bench-photo');
    const before = await photo.getAttribute('src');
    await page.getByLabel('Relief').selectOption('left');
    await page.locator('[data-relief=left]').waitFor();
    await expect.poll(() => photo.getAttribute('src')).not.toBe(before);
    await page.getByRole('button', { name: 'As it is', exact: true }).click();
    await expect.poll(() => photo.getAttribute('src')).toBe(before);
    await measure(page, 1, 'count').waitFor();
  });

  it('its marks are set by the buyer, and stand in the photo’s card after a new reading', async () => {
    await page.getByRole('button', { name: 'Back to reading' }).click();
    await page.locator('.by-hand .mark-sheet').nth(2).waitFor();
    await page.getByRole('button', { name: 'Read this part' }).click();
    await page
      .locator('.by-hand [role=status] p')
      .filter({ hasText: /found|No / })
      .waitFor({ timeout: 120_000 });
    await page.locator('.by-hand .measured-here [data-what=count][data-value=told]').waitFor();
    await page.getByRole('button', { name: 'Measure on this photo' }).click();
    await page.locator('.bench-stage .mark-number').nth(2).waitFor();
  }, 150_000);

  it('keeps to the rules of accessibility, and to the window at every width', async () => {
    expect(await violations(page)).toEqual([]);
    for (const width of [320, 400, 600, 1280]) {
      await page.setViewportSize({ width, height: 900 });
      expect(
        await overTheEdge(page).then((over) =>
          over.filter((name) => !/bench-photo|overlay|mark-number|handle|svg|poly|path/.test(name)),
        ),
      ).toEqual([]);
    }
  });

  it('lays another photo of the case beside it, over it, and blinks', async () => {
    await page.getByText('Side by side', { exact: true }).click();
    await page.getByLabel('The other photo').selectOption('Photo 2');
    const pair = page.locator('.bench-pair .straightened');
    await pair.nth(1).waitFor();
    expect(await pair.evaluateAll((both) => both.map((one) => one.getAttribute('aria-label')))).toEqual([
      'Photo 1',
      'Photo 2',
    ]);
    const sizeOf = async (at: number) => {
      const { width, height } = (await pair.nth(at).boundingBox())!;
      return [width, height];
    };
    const areAlike = async () => (await sizeOf(0)).join() === (await sizeOf(1)).join();
    await expect.poll(areAlike).toBe(true);
    await page.getByLabel('Laid over, share of the other photo').fill('0.5');
    // Both boxes are taken at one moment: the pair is laid out anew when one is laid over the other.
    const boxes = () =>
      pair.evaluateAll((both) =>
        both.map((one) => {
          const { x, y, width, height } = one.getBoundingClientRect();
          return [x, y, width, height].join();
        }),
      );
    await expect.poll(async () => new Set(await boxes()).size).toBe(1);
    await page.getByRole('button', { name: 'Blink' }).click();
    const shown = () =>
      page
        .locator('.bench-pair .straightened')
        .nth(1)
        .evaluate((one) => (one as HTMLElement).style.opacity);
    await expect.poll(shown).toBe('0');
    await expect.poll(shown).toBe('1');
    await page.getByRole('button', { name: 'Blink' }).click();
    expect(await violations(page)).toEqual([]);
  });

  it('zooms around two fingers', async () => {
    // It is touched where it is seen.
    await page.locator('.bench-stage').evaluate((one) => one.scrollIntoView({ block: 'center' }));
    const zoom = async () => Number.parseInt((await page.locator('.bench-view output').textContent()) ?? '', 10);
    const stage = (await page.locator('.bench-stage').boundingBox())!;
    const [x, y] = [stage.x + stage.width / 2, stage.y + 30];
    const before = await zoom();
    const touch = await page.context().newCDPSession(page);
    const send = (type: string, spread: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type: type as 'touchStart',
        touchPoints:
          type === 'touchEnd'
            ? []
            : [
                { x: x - spread, y, id: 1 },
                { x: x + spread, y, id: 2 },
              ],
      });
    await send('touchStart', 30);
    for (const spread of [40, 50, 60]) await send('touchMove', spread);
    await send('touchEnd', 60);
    await expect.poll(zoom).toBeGreaterThan(before * 1.6);
    await page.getByRole('button', { name: 'Whole photo', exact: true }).last().click();
    await expect.poll(zoom).toBe(before);
  });

  it.each(['plain', 'left'])(
    'a drag misses hardly more frames than the page at rest, with the photo shown as %s',
    async (view) => {
      await page.setViewportSize({ width: 1280, height: 1000 });
      const light = page.locator('.bench details', { hasText: 'Turn and light' }).first();
      await light.evaluate((one) => {
        (one as HTMLDetailsElement).open = true;
      });
      await page.getByLabel('Relief').selectOption(view);
      await page.locator(`[data-relief=${view}]`).waitFor();
      const choose = page.getByRole('button', { name: 'Choose mark 1 Row of stitches' });
      if (await choose.isVisible()) await choose.click();
      const handle = page.getByRole('slider', { name: /1 Row of stitches, all of it/ });
      await handle.evaluate((one) => one.scrollIntoView({ block: 'center' }));
      const box = (await handle.boundingBox())!;
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      const missed = async (act: () => Promise<void>): Promise<number> => {
        await page.evaluate(() => {
          const kept = { on: true, times: [] as number[] };
          (globalThis as unknown as { frames: typeof kept }).frames = kept;
          const tick = (time: number) => {
            kept.times.push(time);
            if (kept.on) requestAnimationFrame(tick);
          };
          requestAnimationFrame(tick);
        });
        await act();
        const times = await page.evaluate(() => {
          const { frames } = globalThis as unknown as { frames: { on: boolean; times: number[] } };
          frames.on = false;
          return frames.times;
        });
        const due = ((times.at(-1) ?? 0) - (times[0] ?? 0)) / (1000 / 60);
        return Math.max(0, 1 - (times.length - 1) / due);
      };
      const moves = async () => {
        for (let turn = 0; turn < 60; turn++) await page.mouse.move(x + turn, y + (turn % 7));
      };
      await page.mouse.move(x, y);
      const resting = await missed(moves);
      await page.mouse.move(x, y);
      await page.mouse.down();
      const dragging = await missed(moves);
      await page.mouse.up();
      console.info(`frames missed, ${view}: ${resting.toFixed(3)} at rest, ${dragging.toFixed(3)} while dragging`);
      expect(dragging).toBeLessThan(resting + 0.5);
      await page.getByRole('button', { name: 'Undo the last step' }).click();
    },
  );
});

describe('the bench in a tab of its own', () => {
  let tab: Page;
  it('borrows the photo and its marks; what is marked there is kept where the photo came from', async () => {
    const opened = browser.context.waitForEvent('page');
    await page.getByRole('button', { name: 'Open in a tab of its own' }).click();
    tab = await opened;
    await measure(tab, 1, 'count').waitFor();
    await tab.getByRole('button', { name: 'Length', exact: true }).click();
    await measure(tab, 4, 'length').waitFor();
    await page.locator('.mark-sheet[data-mark="4"]').waitFor();
    await tab.keyboard.press('Control+z');
    await page.locator('.mark-sheet[data-mark="4"]').waitFor({ state: 'detached' });
    expect(await violations(tab)).toEqual([]);
    await tab.getByText('Side by side', { exact: true }).click();
    await tab.getByLabel('The other photo').selectOption('Photo 2');
    await tab.locator('.bench-pair .straightened').nth(1).waitFor();
  });

  it('says when the page that it came from is closed', async () => {
    await page.close();
    await tab.getByRole('alert').filter({ hasText: 'nothing is kept' }).waitFor();
    await tab.reload();
    await tab.getByText('The place this photo came from is closed').waitFor();
  });
});

describe('a photo that browsers show nothing of', () => {
  it('is shown on the bench as a worker drew it', async () => {
    const other = await browser.context.newPage();
    await other.goto(browser.extensionUrl('watchlist.html#photo'));
    const heic = new URL('../photos/heic/drawn.heic', import.meta.url).pathname;
    await other.locator('input[type=file]').setInputFiles(heic);
    await other.getByRole('button', { name: 'Look at photo 1 by hand' }).click({ timeout: 200_000 });
    await other.getByRole('button', { name: 'Measure on this photo' }).click();
    const width = () =>
      other
        .locator('.bench-photo')
        .first()
        .evaluate((shown) => (shown as HTMLImageElement).naturalWidth);
    await expect.poll(width, { timeout: 20_000 }).toBe(320);
    await other.close();
  }, 300_000);
});
