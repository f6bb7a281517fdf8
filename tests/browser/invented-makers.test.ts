import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';

const page = 'ondrasse-carryall-25-1987.html';
let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch({
    flags: ['--host-resolver-rules=MAP shop.example 127.0.0.1, MAP attic-arcade.example 127.0.0.1'],
  });
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/** What the panel says of the same page under a host's name. */
async function panelOn(host: string) {
  const { port } = new URL(market.url);
  const { page: tab, tabId } = await openTab(browser, `http://${host}:${port}/${page}`);
  const panel = await openSidePanel(browser, tab, tabId);
  await panel.untilRead();
  const words = await panel.text();
  const findings = await panel.findings();
  await panel.close();
  await tab.close();
  return { words, kinds: findings.map(({ kind }) => kind) };
}

it('an invented maker judges a page of the demo marketplace, and is called invented', async () => {
  const { words, kinds } = await panelOn('attic-arcade.example');
  expect(kinds).toContain('contradiction');
  expect(words).toContain('by the Ondrasse file: invented, for the demonstration');
});

it('the same page of another shop is judged by no invented maker', async () => {
  const { words, kinds } = await panelOn('shop.example');
  expect(kinds).not.toContain('contradiction');
  expect(words).not.toContain('by the Ondrasse file');
  expect(words).not.toContain('invented');
  expect(words).toContain('No maker file fits “Ondrasse”');
});
