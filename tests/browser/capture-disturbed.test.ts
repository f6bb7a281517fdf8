import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { corners, cornersShown, type FarShop, fourFields, openFarShop } from './far-photos';
import { openTab } from './launch';
import { clickToolbar, openSidePanel } from './toolbar';

let shop: FarShop;
let address: string;
beforeAll(async () => {
  shop = await openFarShop();
  const photo = shop.photo('bag.png', await fourFields(1200, 900));
  address = shop.page('bag.html', {
    photos: [photo],
    css: '.tall { height: 4000px } img { position: absolute; top: 2000px; width: 400px }',
    body: `<div class="tall"></div><img src="${photo}" alt="">`,
  });
});
afterAll(() => shop?.close());

/** What happens in the very moment in which the browser takes a picture: before and after the worker's call. */
type Disturbance = 'tab' | 'window' | 'scroll' | 'page' | 'none';

/** Has the worker's pictures disturbed from now on, so many times; each disturbance is over when the picture is there. */
async function disturb(kind: Disturbance, tabId: number, otherId: number, times: number): Promise<void> {
  const worker = await shop.browser.worker();
  await worker.evaluate(
    ([what, tab, other, often]) => {
      const scope = globalThis as unknown as { takePicture?: typeof chrome.tabs.captureVisibleTab };
      scope.takePicture ??= chrome.tabs.captureVisibleTab;
      const take = scope.takePicture as (windowId: number, options: object) => Promise<string>;
      let left = often;
      const run = (func: () => unknown) => chrome.scripting.executeScript({ target: { tabId: tab }, func });
      const disturbed = async (windowId: number, options: object) => {
        left -= 1;
        if (left < 0) return take(windowId, options);
        if (what === 'tab') await chrome.tabs.update(other, { active: true });
        if (what === 'window') await chrome.windows.create({ tabId: tab });
        if (what === 'scroll') {
          await run(() => {
            scrollBy({ top: 150, behavior: 'instant' });
            // Until it is drawn: a picture of what was there before would be right.
            return new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
          });
        }
        if (what === 'page') await run(() => history.pushState(null, '', '/another.html'));
        const picture = await take(windowId, options);
        if (what === 'tab') await chrome.tabs.update(tab, { active: true });
        if (what === 'scroll') await run(() => scrollBy({ top: -150, behavior: 'instant' }));
        return picture;
      };
      Object.assign(chrome.tabs, { captureVisibleTab: disturbed });
    },
    [kind, tabId, otherId, times] as const,
  );
}

interface Fetched {
  problem?: { code: string; data?: { why: string } };
  size?: number[];
  corners?: string[];
}

describe('while a picture is taken of a photo', () => {
  let [other, otherId]: [Page | null, number] = [null, 0];
  beforeEach(async () => {
    // A page that the user has let Tellstamp read as well: the browser would give its picture.
    const opened = await openTab(
      shop.browser,
      shop.page('other.html', { photos: [], css: 'body { background: #f0f }', body: '' }),
    );
    [other, otherId] = [opened.page, opened.tabId];
    await clickToolbar(shop.browser, opened.page);
    return () => other?.close();
  });

  /** Reads the page undisturbed, then has its photo fetched as the panel does while something happens. */
  async function fetchDisturbed(
    kind: Disturbance,
    times: number,
    before: (tabId: number) => Promise<unknown> = async () => {},
  ) {
    const { page, tabId } = await openTab(shop.browser, address);
    await disturb('none', tabId, otherId, 0);
    const panel = await openSidePanel(shop.browser, page, tabId);
    await panel.untilRead();
    await before(tabId);
    await disturb(kind, tabId, otherId, times);
    const reply = await panel.evaluate<Fetched>(`(async () => {
      const [{ id: photoId }] = (await chrome.storage.session.get('page-${tabId}'))['page-${tabId}'].photos;
      const input = { tabId: ${tabId}, photoId };
      const { ok, value, problem } = await chrome.runtime.sendMessage({
        tellstamp: 1, to: 'background', name: 'photo.fetch', input });
      if (!ok) return { problem };
      const photo = await createImageBitmap(await (await fetch('data:image/png;base64,' + value.base64)).blob());
      const pen = new OffscreenCanvas(photo.width, photo.height).getContext('2d');
      pen.drawImage(photo, 0, 0);
      const at = (x, y) => '#' + [...pen.getImageData(x, y, 1, 1).data].slice(0, 3)
        .map((one) => one.toString(16).padStart(2, '0')).join('');
      const [right, bottom] = [photo.width - 1, photo.height - 1];
      return { size: [photo.width, photo.height], corners: [at(0, 0), at(right, 0), at(right, bottom), at(0, bottom)] };
    })()`);
    await panel.close();
    await page.close();
    return reply;
  }

  it.each([
    ['other-tab', 'tab'],
    ['other-window', 'window'],
    ['moved', 'scroll'],
    ['other-page', 'page'],
  ] as const)('nothing is taken after a disturbance (%s), though all stands as before', async (why, kind) => {
    const { problem, corners: seen } = await fetchDisturbed(kind, 99);
    expect(seen).toBeUndefined();
    expect(problem).toMatchObject({ code: 'capture-disturbed', data: { why } });
  });

  it.each(['tab', 'window', 'scroll', 'none'] as const)('it is taken again after one disturbance: %s', async (kind) => {
    expect(await fetchDisturbed(kind, 1)).toEqual({ size: [400, 300], corners: [...corners] });
  });

  it('the tab may have been moved to another window since its page was read', async () => {
    const worker = await shop.browser.worker();
    const move = (tabId: number) => worker.evaluate((id) => chrome.windows.create({ tabId: id }), tabId);
    expect(await fetchDisturbed('none', 0, move)).toEqual({ size: [400, 300], corners: [...corners] });
  });

  it('the panel says that it was thrown away, and what to do', async () => {
    const { page, tabId } = await openTab(shop.browser, address);
    await disturb('tab', tabId, otherId, 99);
    const panel = await openSidePanel(shop.browser, page, tabId);
    await panel.untilRead();
    expect(await cornersShown(panel)).toEqual([null]);
    // The reading may be done before the last try is.
    await panel.until(`document.querySelector('.progress-line').textContent === 'Page read, and 0 of 1 photo.'`);
    const said = await panel.text();
    expect(said).toContain('the picture of it was thrown away, because another tab came to the front');
    expect(said).toContain('Keep the page in front and still, and read again.');
    expect(said).toContain('Allow reading from photos.attic-arcade.example');
    await panel.close();
    await page.close();
  });
});
