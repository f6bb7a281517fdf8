import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { openSidePanel } from './toolbar';

const page = (frame: string) => `<!doctype html><html lang="en"><head><title>Ondrasse Carryall 30</title></head><body>
  <main><h1>Ondrasse Carryall 30</h1><p>€540.00</p><div class="description">
  <iframe src="${frame}" width="600" height="400" title="Description"></iframe></div></main></body></html>`;
const words = '<!doctype html><title>Description</title><p>A bag made in Belgium in 1995.</p><p hidden>Not shown.</p>';

let shop: Market;
let frames: Market;
beforeAll(async () => {
  [shop, frames] = await Promise.all([startMarket(), startMarket()]);
  frames.make('words.html', { type: 'text/html; charset=utf-8', body: words });
  // The same loopback under its name is another host than under its number.
  const frame = frames.url.replace('127.0.0.1', 'localhost');
  shop.make('framed.html', { type: 'text/html; charset=utf-8', body: page(`${frame}words.html`) });
  // Added after the page has loaded, which it would keep from ever being so.
  const late = `<script>addEventListener('load', () => {
    const frame = document.createElement('iframe');
    frame.src = '${frame}endless.html';
    document.body.append(frame);
  });</script>`;
  shop.make('endless.html', { type: 'text/html; charset=utf-8', body: page(`${frame}words.html`) + late });
  frames.make('endless.html', 'never');
});
afterAll(() => Promise.all([shop?.close(), frames?.close()]));

/** What the panel says of a page after it has read it. */
async function readIn(browser: Browser, path: string): Promise<string> {
  const { page: tab, tabId } = await openTab(browser, shop.url + path);
  const panel = await openSidePanel(browser, tab, tabId);
  await panel.untilRead();
  const said = await panel.evaluate<string>('document.body.textContent');
  await panel.close();
  await tab.close();
  return said;
}

describe('a description in a frame of another host', () => {
  let browser: Browser;
  afterAll(() => browser?.close());

  it('is said not to be read without the right to that host', async () => {
    browser = await launch();
    const said = await readIn(browser, 'framed.html');
    expect(said).toContain('stands in a frame of another site and was not read');
    expect(said).not.toContain('Belgium');
    await browser.close();
  });

  it('is read with it, and then nothing is said to be missing', async () => {
    browser = await launch({ hosts: ['http://localhost/*'] });
    const said = await readIn(browser, 'framed.html');
    expect(said).toContain('Belgium');
    expect(said).not.toContain('was not read');
    expect(said).not.toContain('Not shown');
  });

  it('is read beside a frame that never finishes loading', async () => {
    const said = await readIn(browser, 'endless.html');
    expect(said).toContain('Belgium');
  });
});
