import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openPanel, openTab } from './launch';
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

/** Stops the extension's worker as the browser does after 30 idle seconds. */
async function stopWorker(): Promise<void> {
  const session = await debuggerOf(browser);
  const { targetInfos } = await session.send('Target.getTargets');
  const target = targetInfos.find(({ type }) => type === 'service_worker');
  if (!target) throw new Error('there is no worker to stop');
  await session.send('Target.closeTarget', { targetId: target.targetId });
  await session.detach();
}

describe('a reading that is interrupted', () => {
  it('goes on to its end when the worker is stopped in the middle', async () => {
    const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-25-1987.html`);
    const panel = await openSidePanel(browser, page, tabId);
    await panel.until(`document.querySelector('[data-stage=photos]')?.innerText.includes('1 of 5 done')`, 300_000);
    await stopWorker();
    await panel.untilRead();
    expect(await panel.evaluate(`document.querySelector('.progress-line').innerText`)).toBe('Page and 5 photos read.');
    await panel.close();
    await page.close();
  });

  it('stops at the button, says how far it came, and goes on from there', async () => {
    const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-25-1987.html`);
    const panel = await openSidePanel(browser, page, tabId);
    await panel.until(`document.querySelector('[data-stage=photos]')?.innerText.includes('1 of 5 done')`, 300_000);
    await panel.click('Stop');
    await panel.until(`document.querySelector('[data-stage=stopped]')`);
    expect(await panel.text()).toContain('Stopped after 1 of 5 photos.');
    await panel.click('Read the rest');
    await panel.untilRead();
    expect(await panel.codes()).toContain('KV0978');
    await panel.close();
    await page.close();
  });

  it('starts anew when the panel is opened again', async () => {
    const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-25-blurred.html`);
    await (await openSidePanel(browser, page, tabId)).close();
    const panel = await openPanel(browser, tabId);
    await panel.locator('[data-stage=photos]').waitFor({ timeout: 60_000 });
    await panel.reload();
    await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 300_000 });
    expect(await panel.locator('.listing-title').textContent()).toContain('Ondrasse');
    await panel.close();
    await page.close();
  });
});
