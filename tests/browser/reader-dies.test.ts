import { readFileSync } from 'node:fs';
import type { Worker } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { PhotoView } from '../../src/message/protocol';
import type { Result } from '../../src/problem';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openAsking } from './reader-messages';
import { debuggerOf, openSidePanel } from './toolbar';

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/** Closes the offscreen document, as the browser may at any time. */
async function closeReader(): Promise<void> {
  const session = await debuggerOf(browser);
  const { targetInfos } = await session.send('Target.getTargets');
  const reader = targetInfos.find(({ url }) => url === browser.extensionUrl('reader.html'));
  if (reader) await session.send('Target.closeTarget', { targetId: reader.targetId });
  await session.detach();
}

it('a reader that is closed again and again in the middle of a listing costs no photo', async () => {
  const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-25-1987.html`);
  const panel = await openSidePanel(browser, page, tabId);
  for (const done of [0, 1, 2, 3, 4]) {
    const words = `${done} of 5 done`;
    await panel.until(`document.querySelector('[data-stage=photos]')?.innerText.includes('${words}')`, 300_000);
    await closeReader();
  }
  await panel.untilRead();
  expect(await panel.evaluate(`document.querySelector('.progress-line').innerText`)).toBe('Page and 5 photos read.');
  expect(await panel.codes()).toContain('KV0978');
  await panel.close();
  await page.close();
});

it('a worker that ends without a word is known to be gone at once, and the next photo is read by another', async () => {
  const asking = await openAsking(browser);
  // The reader's own page in a tab: the offscreen document's worker is out of the tests' reach.
  await closeReader();
  const reader = await browser.context.newPage();
  await reader.goto(browser.extensionUrl('reader.html'));
  const photo = readFileSync(new URL('../market/site/photos/l2-stamp.jpg', import.meta.url)).toString('base64');
  const read = (photoId: string) =>
    asking.evaluate(
      async ([id, base64]) => {
        const file = URL.createObjectURL(await (await fetch(`data:;base64,${base64}`)).blob());
        const adjustment = { crop: null, turn: 0, invert: false };
        const input = { photoId: id, file, adjustment };
        return chrome.runtime.sendMessage({ tellstamp: 1, to: 'reader', name: 'photo.read', input }) as Promise<
          Result<PhotoView>
        >;
      },
      [photoId, photo] as const,
    );
  const worker = (): Promise<Worker> => reader.waitForEvent('worker');
  const first = worker();
  expect(await Promise.all([first, read('p1')]).then(([, reply]) => reply.ok)).toBe(true);
  // At the photo itself: ended before it came, another worker would read it; ended a while after, it might be read already.
  await (await first).evaluate(() => self.addEventListener('message', () => self.close()));
  expect(await read('p2')).toMatchObject({ ok: false, problem: { code: 'reader-stopped' } });
  expect((await read('p3')).ok).toBe(true);
  await reader.close();
  await asking.close();
});
