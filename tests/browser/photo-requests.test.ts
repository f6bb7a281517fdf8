import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listingHtml } from '../market/listing-page';
import { type Browser, launch, openTab } from './launch';
import { file, leadTo, type PhotoHost, pageOf, startPhotoHost, withoutEnd } from './photo-host';
import { clickToolbar } from './toolbar';

const shopName = 'attic-arcade.example';
const grantedName = 'granted.photos.example';
const openName = 'open.photos.example';

let shop: PhotoHost;
let photos: PhotoHost;
let inside: PhotoHost;
let browser: Browser;
let asking: Page;
let photo: Buffer;

beforeAll(async () => {
  [shop, photos, inside] = await Promise.all([startPhotoHost(), startPhotoHost(), startPhotoHost()]);
  browser = await launch({
    window: { width: 1100, height: 800 },
    hosts: [`http://${shopName}/*`, `http://${grantedName}/*`],
    flags: [`--host-resolver-rules=MAP ${shopName} 127.0.0.1, MAP *.photos.example 127.0.0.1`],
  });
  asking = await browser.context.newPage();
  await asking.goto(browser.extensionUrl('sidepanel.html'));
  photo = await sharp({ create: { width: 640, height: 480, channels: 3, background: '#7a3b23' } })
    .png()
    .toBuffer();
});
afterAll(async () => {
  await browser?.close();
  await Promise.all([shop?.close(), photos?.close(), inside?.close()]);
});

const at = (name: string, { port }: PhotoHost, path: string) => `http://${name}:${port}${path}`;

interface Fetched {
  ok: boolean;
  value?: { base64: string; mediaType: string; came: { way: string } };
  problem?: { code: string };
}

/** Has the extension read a listing and fetch its first photo, as the panel does. */
async function fetchFirstPhoto(name: string, html: string, { clicked = false } = {}): Promise<Fetched> {
  shop.on(`/${name}`, pageOf(html));
  const { page, tabId } = await openTab(browser, at(shopName, shop, `/${name}`));
  // Only a click gives the right to a picture of the tab.
  if (clicked) await clickToolbar(browser, page);
  const fetched = await asking.evaluate(async (tab) => {
    const ask = (name: string, input: object) =>
      chrome.runtime.sendMessage({ tellstamp: 1, to: 'background', name, input });
    const read = (await ask('page.read', { tabId: tab })) as { value: { listing: { photos: { id: string }[] } } };
    return ask('photo.fetch', { tabId: tab, photoId: read.value.listing.photos[0]?.id });
  }, tabId);
  await page.close();
  return fetched as Fetched;
}

describe('a photo on a host that the user allowed', () => {
  it('comes by the extension’s own request, over http too, without cookies', async () => {
    photos.on('/granted.png', file('image/png', photo));
    const url = at(grantedName, photos, '/granted.png');
    await browser.context.addCookies([{ name: 'who', value: 'me', domain: grantedName, path: '/' }]);
    const fetched = await fetchFirstPhoto('granted', listingHtml([url]));
    expect(fetched).toMatchObject({
      ok: true,
      value: { mediaType: 'image/png', came: { way: 'background', fullSize: true } },
    });
    expect(Buffer.from(fetched.value?.base64 ?? '', 'base64').equals(photo)).toBe(true);
    const asked = photos.asked.filter(({ path }) => path === '/granted.png');
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.filter(({ cookie }) => cookie !== undefined)).toEqual([]);
  });
});

describe('a photo of the page’s own host', () => {
  it('is asked for by the page, with its cookies', async () => {
    shop.on('/own.png', file('image/png', photo));
    await browser.context.addCookies([{ name: 'visit', value: '1', domain: shopName, path: '/' }]);
    const fetched = await fetchFirstPhoto('own', listingHtml([at(shopName, shop, '/own.png')]));
    expect(fetched).toMatchObject({ ok: true, value: { came: { way: 'page', fullSize: true } } });
    expect(shop.asked.find(({ path }) => path === '/own.png')?.cookie).toBe('visit=1');
  });
});

describe('a photo that leads on to an address inside the user’s network', () => {
  it.each([
    ['an allowed host', grantedName],
    ['a host that lets every script fetch', openName],
  ])('is not followed from %s', async (_, name) => {
    inside.on('/inside.png', file('image/png', photo, { crossOrigin: true }));
    photos.on('/led.png', leadTo(`http://127.0.0.1:${inside.port}/inside.png`));
    const fetched = await fetchFirstPhoto('led', listingHtml([at(name, photos, '/led.png')]));
    expect(fetched).toMatchObject({ ok: false, problem: { code: 'photo-redirected' } });
    expect(photos.asked.filter(({ path }) => path === '/led.png').length).toBeGreaterThan(0);
    expect(inside.asked).toEqual([]);
  });

  it('is not asked for when the page names it itself', async () => {
    inside.on('/inside.png', file('image/png', photo, { crossOrigin: true }));
    const url = `http://127.0.0.1:${inside.port}/inside.png`;
    expect(await fetchFirstPhoto('named', listingHtml([url]))).toMatchObject({ problem: { code: 'address-refused' } });
    expect(inside.asked).toEqual([]);
  });
});

describe('a photo that leads on and is shown by the page', () => {
  it('is drawn from the page in its full size, without a further request', async () => {
    shop.on('/led-own.png', leadTo('/own-far.png'));
    shop.on('/own-far.png', file('image/png', photo));
    const url = at(shopName, shop, '/led-own.png');
    const fetched = await fetchFirstPhoto('shown', listingHtml([url], `<img src="${url}" width="160" alt="">`));
    expect(fetched).toMatchObject({ ok: true, value: { came: { way: 'page', fullSize: true } } });
    const { width, height } = await sharp(Buffer.from(fetched.value?.base64 ?? '', 'base64')).metadata();
    expect([width, height]).toEqual([640, 480]);
    expect(shop.asked.filter(({ path }) => path === '/own-far.png').length).toBe(1);
  });
});

describe('a photo that leads on to another host and is shown by the page', () => {
  it('is taken from the tab, and said to lead on', async () => {
    photos.on('/led-far.png', leadTo(at(grantedName, photos, '/far.png')));
    photos.on('/far.png', file('image/png', photo));
    const url = at(openName, photos, '/led-far.png');
    const fetched = await fetchFirstPhoto('captured', listingHtml([url], `<img src="${url}" width="320" alt="">`), {
      clicked: true,
    });
    expect(fetched.problem).toBeUndefined();
    expect(fetched).toMatchObject({ ok: true, value: { came: { way: 'capture', fullSize: false, ledOn: true } } });
    // Once by the page itself, for its picture; the extension's request stopped before it.
    expect(photos.asked.filter(({ path }) => path === '/far.png').length).toBe(1);
  });
});

describe('a photo that never ends', () => {
  it.each([
    ['the extension’s own request', grantedName],
    ['the page’s request', openName],
  ])('is left at the limit by %s', async (_, name) => {
    const path = `/endless-${name}`;
    const given = new Promise<number>((tell) => photos.on(path, withoutEnd(tell, { crossOrigin: name === openName })));
    const fetched = await fetchFirstPhoto('endless', listingHtml([at(name, photos, path)]));
    expect(fetched).toMatchObject({ ok: false, problem: { code: 'photo-too-large' } });
    // The limit is 24 MB; what the browser had taken in advance comes on top.
    expect(await given).toBeLessThan(150_000_000);
  });
});

describe('a script inside a page', () => {
  it('asks the extension for nothing: only the panel is answered', async () => {
    await fetchFirstPhoto('asking', listingHtml([]));
    const { page, tabId } = await openTab(browser, at(shopName, shop, '/asking'));
    const worker = await browser.worker();
    const answer = await worker.evaluate(async (tab) => {
      const [outcome] = await chrome.scripting.executeScript({
        target: { tabId: tab },
        args: [{ tellstamp: 1, to: 'background', name: 'page.read', input: { tabId: tab } }],
        func: (envelope) => chrome.runtime.sendMessage(envelope),
      });
      return outcome?.result;
    }, tabId);
    expect(answer).toMatchObject({
      ok: false,
      problem: { code: 'message-refused', data: { why: 'not-from', said: 'page: panel' } },
    });
    await page.close();
  });
});

describe('what the extension stores', () => {
  it('is closed to a script inside a page', async () => {
    await fetchFirstPhoto('stored', listingHtml([]));
    const { page, tabId } = await openTab(browser, at(shopName, shop, '/stored'));
    const worker = await browser.worker();
    await worker.evaluate(() => chrome.storage.local.set({ 'maker-draft-1': 'kept' }));
    const tried = await worker.evaluate(async (tab) => {
      const [outcome] = await chrome.scripting.executeScript({
        target: { tabId: tab },
        func: async () => {
          const attempt = (act: () => Promise<unknown>) =>
            Promise.resolve()
              .then(act)
              .then(JSON.stringify, () => 'refused');
          return [
            await attempt(() => chrome.storage.local.get(null)),
            await attempt(() => chrome.storage.local.set({ 'maker-draft-1': 'changed' })),
            await attempt(() => chrome.storage.session.get(null)),
          ];
        },
      });
      return outcome?.result;
    }, tabId);
    expect(tried).toEqual(['refused', 'refused', 'refused']);
    expect(await worker.evaluate(() => chrome.storage.local.get('maker-draft-1'))).toEqual({ 'maker-draft-1': 'kept' });
    await page.close();
  });
});
