import { randomBytes } from 'node:crypto';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { listingHtml } from '../market/listing-page';
import { type Browser, launch } from './launch';
import { file, type PhotoHost, pageOf, startPhotoHost } from './photo-host';

const shopName = 'attic-arcade.example';
const grantedName = 'granted.photos.example';
const openName = 'open.photos.example';

let shop: PhotoHost;
let photos: PhotoHost;
let profile: string;
beforeAll(async () => {
  [shop, photos] = await Promise.all([startPhotoHost(), startPhotoHost()]);
  profile = await mkdtemp(join(tmpdir(), 'tellstamp-traces-'));
});
afterAll(async () => {
  await rm(profile, { recursive: true, force: true });
  await Promise.all([shop?.close(), photos?.close()]);
});

/** A photo like no other: its bytes are found wherever they lie. */
const makePhoto = () =>
  sharp(randomBytes(320 * 240 * 3), { raw: { width: 320, height: 240, channels: 3 } })
    .png()
    .toBuffer();

/** Files of a folder in which a part of a photo stands, as it is or as base64 in any of its three shifts. */
async function filesWith(folder: string, photo: Buffer): Promise<string[]> {
  const part = photo.subarray(photo.length >> 1, (photo.length >> 1) + 48);
  const shifted = [0, 1, 2].map((shift) => Buffer.from(part.subarray(shift, shift + 33).toString('base64')));
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const found: string[] = [];
  for (const entry of entries.filter((one) => one.isFile())) {
    const path = join(entry.parentPath, entry.name);
    const bytes = await readFile(path);
    if ([part, ...shifted].some((wanted) => bytes.includes(wanted))) found.push(path);
  }
  return found;
}

/** Lets the extension into private windows, as its user does on the browser's page of extensions. */
async function allowPrivateWindows(browser: Browser): Promise<void> {
  const page = await browser.context.newPage();
  await page.goto('chrome://extensions');
  await page.evaluate(
    (extensionId) =>
      (
        chrome as unknown as {
          developerPrivate: { updateExtensionConfiguration(change: object): Promise<void> };
        }
      ).developerPrivate.updateExtensionConfiguration({ extensionId, incognitoAccess: true }),
    browser.id,
  );
  await page.close();
}

/** Opens an address in a window of its own and gives the number of its tab, once it is loaded. */
const openWindow = async (asking: Page, url: string, incognito: boolean) => {
  const tabId = await asking.evaluate(
    async ([address, isPrivate]) =>
      (await chrome.windows.create({ url: address, incognito: isPrivate }))?.tabs?.[0]?.id,
    [url, incognito] as const,
  );
  await expect
    .poll(() => asking.evaluate(async (id) => (await chrome.tabs.get(id as number)).status, tabId), { timeout: 20_000 })
    .toBe('complete');
  return tabId as number;
};

/** Has the extension read a tab's listing and fetch all its photos; gives the way of each, or why it did not come. */
const fetchPhotos = (asking: Page, tabId: number): Promise<string[]> =>
  asking.evaluate(async (tab) => {
    const ask = (name: string, input: object) =>
      chrome.runtime.sendMessage({ tellstamp: 1, to: 'background', name, input });
    const read = (await ask('page.read', { tabId: tab })) as { value: { listing: { photos: { id: string }[] } } };
    const outcomes: string[] = [];
    for (const { id } of read.value.listing.photos) {
      const reply = (await ask('photo.fetch', { tabId: tab, photoId: id })) as {
        value?: { came: { way: string } };
        problem?: { code: string };
      };
      outcomes.push(reply.value?.came.way ?? reply.problem?.code ?? '');
    }
    return outcomes;
  }, tabId);

it('no bytes of a photo that the extension asked for lie in the profile, from a private window nor from a normal one', async () => {
  const [shown, granted, open, privateGranted, privateOpen] = await Promise.all(Array.from({ length: 5 }, makePhoto));
  const address = (name: string, path: string) => `http://${name}:${photos.port}/${path}.png`;
  const serve = (path: string, photo: Buffer | undefined, crossOrigin = false) =>
    photos.on(`/${path}.png`, file('image/png', photo ?? '', { crossOrigin }));
  serve('logo', shown);
  serve('granted', granted);
  serve('open', open, true);
  serve('private-granted', privateGranted);
  serve('private-open', privateOpen, true);
  const normal = [address(grantedName, 'granted'), address(openName, 'open')];
  // The page's own picture lies in the browser's cache, as always: it shows that the search finds what is there.
  const image = `<img src="${address(openName, 'logo')}" alt="" width="20" height="20">`;
  shop.on('/normal', pageOf(listingHtml(normal, image)));
  const closed = [address(grantedName, 'private-granted'), address(openName, 'private-open')];
  shop.on('/private', pageOf(listingHtml(closed)));

  const options = {
    profile,
    hosts: [`http://${shopName}/*`, `http://${grantedName}/*`],
    flags: [`--host-resolver-rules=MAP ${shopName} 127.0.0.1, MAP *.photos.example 127.0.0.1`],
  };
  // The change holds from the next start on.
  const before = await launch(options);
  await allowPrivateWindows(before).finally(before.end);
  const browser = await launch(options);
  try {
    const asking = await browser.context.newPage();
    await asking.goto(browser.extensionUrl('sidepanel.html'));
    const tabId = await openWindow(asking, `http://${shopName}:${shop.port}/normal`, false);
    expect(await fetchPhotos(asking, tabId)).toEqual(['background', 'page']);
    const privateId = await openWindow(asking, `http://${shopName}:${shop.port}/private`, true);
    expect(await asking.evaluate(async (id) => (await chrome.tabs.get(id)).incognito, privateId)).toBe(true);
    // The normal profile's own request would leave the host's name behind: it is not made, the page's is.
    expect(await fetchPhotos(asking, privateId)).toEqual(['photo-unreachable', 'page']);
  } finally {
    await browser.end();
  }
  expect(await filesWith(profile, shown as Buffer)).not.toEqual([]);
  for (const photo of [granted, open, privateGranted, privateOpen]) {
    expect(await filesWith(profile, photo as Buffer)).toEqual([]);
  }
});
