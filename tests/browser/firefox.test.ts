import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { Firefox, findFirefox } from './firefox';

const name = findFirefox();
if (name === null) console.log('Firefox: skipped, not installed ("apt-get install firefox-esr" brings it).');

/** What a page shows once it has read everything, or says that it cannot. */
const whenRead = `  new Promise((settle) => {
  const done = () => document.querySelector('[data-stage=done]') || document.querySelector('[role=alert]');
  const tell = () => settle(document.body.innerText);
  if (done()) return tell();
  const watcher = new MutationObserver(() => { if (done()) { watcher.disconnect(); tell(); } });
  watcher.observe(document, { subtree: true, childList: true, attributes: true });
  setTimeout(tell, 240000);
})`;

describe.skipIf(name === null)('in Firefox', () => {
  let market: Market;
  let firefox: Firefox;
  beforeAll(async () => {
    market = await startMarket();
    firefox = await Firefox.start(name as string, ['http://127.0.0.1/*']);
  });
  afterAll(async () => {
    await firefox?.close();
    await market?.close();
  });

  it('the panel reads a listing and its stamp, without an offscreen document', async () => {
    await firefox.open(`${market.url}ondrasse-carryall-25-1987.html`);
    const list = await firefox.open(firefox.extensionUrl('watchlist.html'));
    const tabId = await firefox.evaluate<number>(
      list,
      `browser.tabs.query({ url: 'http://127.0.0.1/*' }).then(([tab]) => tab.id)`,
    );
    const panel = await firefox.open(firefox.extensionUrl(`sidepanel.html?tab=${tabId}`));
    const shown = await firefox.evaluate<string>(panel, whenRead);
    expect(shown).toContain('Page and 5 photos read.');
    expect(shown).toContain('KV0978');
    expect(shown).toContain('The stamp in photo 5 reads KV0978: July 1998, Belgium. The listing says “1987”.');
  }, 300_000);

  it('the first page reads the demo listing in its own tab, by its own reader', async () => {
    const demo = await firefox.open(firefox.extensionUrl('watchlist.html#demo'));
    const shown = await firefox.evaluate<string>(demo, whenRead);
    expect(shown).toContain('The stamp in photo 3 reads July 1998, Belgium. The listing says 1987.');
    expect(shown).toContain('by the Ondrasse file: invented, for the demonstration');
  }, 300_000);
});
