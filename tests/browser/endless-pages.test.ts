import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel, type SidePanel } from './toolbar';

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch();
  const photo = sharp({ create: { width: 400, height: 300, channels: 3, background: '#7a3b23' } });
  market.make('endless/a.jpg', { type: 'image/jpeg', body: await photo.jpeg().toBuffer() });
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

const pageOf = (rest: string) => `<!doctype html><html lang="en"><head><title>Satchel</title></head><body><main>
<h1>Tessaro Vell Satchel 28</h1><p class="price">€260.00</p><div class="description">One owner, bought in Ghent in 1996.</div>
<img src="/endless/a.jpg" width="400" height="300" alt="">${rest}`;

/** Opens a page of ours without waiting for its end, and its side panel by a click on the toolbar. */
async function openUnended(path: string): Promise<{ panel: SidePanel; close(): Promise<void> }> {
  const worker = await browser.worker();
  const arrives = browser.context.waitForEvent('page');
  const url = `${market.url}${path}`;
  const tabId = await worker.evaluate(
    async (address) => (await chrome.tabs.create({ url: address })).id as number,
    url,
  );
  const page = await arrives;
  await page.getByRole('heading', { name: 'Tessaro Vell Satchel 28' }).waitFor();
  const panel = await openSidePanel(browser, page, tabId);
  return {
    panel,
    close: async () => {
      await panel.close();
      await page.close();
    },
  };
}

describe('pages that never come to rest', () => {
  it('a document that never ends streaming is read as far as it came, and that is said', async () => {
    market.make('stream.html', { type: 'text/html; charset=utf-8', body: pageOf('<p>And then'), unended: true });
    const { panel, close } = await openUnended('stream.html');
    await panel.untilRead();
    const text = await panel.text();
    expect(text).toContain('Tessaro Vell Satchel 28');
    expect(text).toContain('The page was still loading when it was read');
    await close();
  });

  for (const [name, address] of [
    ['same', 'location.href'],
    ['new', '"?t=" + Date.now()'],
  ])
    it(`a page that replaces its history entry every 200 ms by the ${name} address is read with its photos`, async () => {
      const script = `<script>setInterval(() => history.replaceState({}, '', ${address}), 200)</script></main></body></html>`;
      market.make(`replaced-${name}.html`, { type: 'text/html; charset=utf-8', body: pageOf(script) });
      const { page, tabId } = await openTab(browser, `${market.url}replaced-${name}.html`);
      const panel = await openSidePanel(browser, page, tabId);
      await panel.untilRead();
      const text = await panel.text();
      expect(text).toContain('Tessaro Vell Satchel 28');
      expect(text).toContain('Page and 1 photo read');
      expect(await panel.evaluate(`document.querySelectorAll('.photo-strip img').length`)).toBe(1);
      await panel.close();
      await page.close();
    });

  it('a page of half a million parts is read as far as the budget goes, and that is said', async () => {
    market.make('large.html', { type: 'text/html; charset=utf-8', body: pageOf('<b>x</b>'.repeat(250_000)) });
    const { panel, close } = await openUnended('large.html');
    await panel.untilRead();
    expect(await panel.text()).toContain('what follows its first 60,000 elements and texts');
    await close();
  });

  it('a reload under the same address is told from that: the panel says that the page was left', async () => {
    market.make('reloaded.html', { type: 'text/html; charset=utf-8', body: pageOf('</main></body></html>') });
    const { page, tabId } = await openTab(browser, `${market.url}reloaded.html`);
    const panel = await openSidePanel(browser, page, tabId);
    await panel.untilRead();
    expect(await panel.text()).not.toContain('The page has changed since it was read.');
    await page.reload();
    await panel.until(`document.body.innerText.includes('The page has changed since it was read.')`);
    await panel.close();
    await page.close();
  });
});
