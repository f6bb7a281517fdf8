import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openReadingBrowser, type ReadingBrowser } from './reading-browser';

const page = `<!doctype html><html lang="en"><body><main><h1>Tessaro Vell Satchel 28</h1>
<p class="price" onclick="document.body.dataset.clicked = 'yes'">€900.00</p>
<div class="box"><span class="css-4711">€260.00</span></div></main></body></html>`;

describe('pointing at a field on the page', () => {
  let browser: ReadingBrowser;
  beforeAll(async () => {
    browser = await openReadingBrowser('/nowhere');
  });
  afterAll(() => browser?.close());

  it('takes what was clicked, keeps the click from the page, and leaves nothing behind', async () => {
    const { pick, left } = await browser.pick(page, 'price', (tab) => tab.click('.price'));
    expect(pick).toEqual({ field: 'price', selector: '.price' });
    expect(left).not.toContain('data-clicked');
    expect(left).not.toContain('z-index');
  });

  it('gives a selector without names that a build or a number made', async () => {
    const { pick } = await browser.pick(page, 'price', (tab) => tab.click('.css-4711'));
    expect(pick?.selector).not.toContain('4711');
    const { listing } = await browser.read('picked.html', page, false, pick ? [pick] : []);
    expect(listing.price[0]).toMatchObject({ origin: 'user-pick', value: { minor: 26000 } });
  });

  it('works by keyboard, and ends with Escape', async () => {
    const chosen = await browser.pick(page, 'title', async (tab) => {
      await tab.hover('h1');
      await tab.keyboard.press('ArrowRight');
      await tab.keyboard.press('ArrowLeft');
      await tab.keyboard.press('Enter');
    });
    expect(chosen.pick).toEqual({ field: 'title', selector: 'h1' });
    const ended = await browser.pick(page, 'title', (tab) => tab.keyboard.press('Escape'));
    expect(ended.pick).toBeNull();
  });
});
