import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listingHtml } from '../market/listing-page';
import { Firefox, findFirefox } from './firefox';
import { file, leadTo, type PhotoHost, pageOf, startPhotoHost, withoutEnd } from './photo-host';

const name = findFirefox();
if (name === null) console.log('Firefox: skipped, not installed ("apt-get install firefox-esr" brings it).');

const shopName = 'attic-arcade.example';
const grantedName = 'granted.photos.example';
const openName = 'open.photos.example';

interface Fetched {
  ok: boolean;
  value?: { base64: string; mediaType: string; came: { way: string } };
  problem?: { code: string };
}

describe.skipIf(name === null)('photos in Firefox', () => {
  let shop: PhotoHost;
  let photos: PhotoHost;
  let inside: PhotoHost;
  let firefox: Firefox;
  let asking: string;
  let photo: Buffer;
  beforeAll(async () => {
    [shop, photos, inside] = await Promise.all([startPhotoHost(), startPhotoHost(), startPhotoHost()]);
    const hosts = [`http://${shopName}/*`, `http://${grantedName}/*`];
    firefox = await Firefox.start(name as string, hosts, [shopName, grantedName, openName]);
    asking = await firefox.open(firefox.extensionUrl('sidepanel.html'));
    photo = await sharp({ create: { width: 640, height: 480, channels: 3, background: '#7a3b23' } })
      .png()
      .toBuffer();
  }, 120_000);
  afterAll(async () => {
    await firefox?.close();
    await Promise.all([shop?.close(), photos?.close(), inside?.close()]);
  });

  const at = (host: string, { port }: PhotoHost, path: string) => `http://${host}:${port}${path}`;

  /** Opens a listing and gives the number of its tab. */
  async function openListing(path: string, html: string): Promise<number> {
    shop.on(path, pageOf(html));
    const url = at(shopName, shop, path);
    await firefox.open(url);
    return firefox.evaluate<number>(
      asking,
      `browser.tabs.query({}).then((tabs) => tabs.find((tab) => tab.url === ${JSON.stringify(url)}).id)`,
    );
  }

  /** Has the extension read a listing and fetch its first photo, as the panel does. */
  async function fetchFirstPhoto(path: string, html: string): Promise<Fetched> {
    const tab = await openListing(path, html);
    return firefox.evaluate<Fetched>(
      asking,
      `(async () => {
        const ask = (name, input) => browser.runtime.sendMessage({ tellstamp: 1, to: 'background', name, input });
        const read = await ask('page.read', { tabId: ${tab} });
        return ask('photo.fetch', { tabId: ${tab}, photoId: read.value.listing.photos[0].id });
      })()`,
    );
  }

  it('come from a host that the user allowed, over http too', async () => {
    photos.on('/granted.png', file('image/png', photo));
    const fetched = await fetchFirstPhoto('/granted', listingHtml([at(grantedName, photos, '/granted.png')]));
    expect(fetched).toMatchObject({ ok: true, value: { mediaType: 'image/png', came: { way: 'background' } } });
    expect(Buffer.from(fetched.value?.base64 ?? '', 'base64').equals(photo)).toBe(true);
  });

  it('come by the page from a host that lets every script fetch', async () => {
    photos.on('/open.png', file('image/png', photo, { crossOrigin: true }));
    const fetched = await fetchFirstPhoto('/open', listingHtml([at(openName, photos, '/open.png')]));
    expect(fetched).toMatchObject({ ok: true, value: { mediaType: 'image/png', came: { way: 'page' } } });
    expect(Buffer.from(fetched.value?.base64 ?? '', 'base64').equals(photo)).toBe(true);
  });

  it.each([grantedName, openName])('that lead on into the user’s network are not followed (%s)', async (host) => {
    inside.on('/inside.png', file('image/png', photo, { crossOrigin: true }));
    photos.on('/led.png', leadTo(`http://127.0.0.1:${inside.port}/inside.png`));
    const fetched = await fetchFirstPhoto(`/led-${host}`, listingHtml([at(host, photos, '/led.png')]));
    expect(fetched).toMatchObject({ ok: false, problem: { code: 'photo-redirected' } });
    expect(inside.asked).toEqual([]);
  });

  it.each([grantedName, openName])('that never end are left at the limit (%s)', async (host) => {
    const path = `/endless-${host}`;
    const given = new Promise<number>((tell) => photos.on(path, withoutEnd(tell, { crossOrigin: host === openName })));
    const fetched = await fetchFirstPhoto(`/page${path}`, listingHtml([at(host, photos, path)]));
    expect(fetched).toMatchObject({ ok: false, problem: { code: 'photo-too-large' } });
    expect(await given).toBeLessThan(150_000_000);
  });

  // Firefox 153 knows no access level for storage.local (docs/security.md); this holds for one that does.
  it('what is stored is closed to a script inside a page, where this Firefox can close it', async () => {
    const tab = await openListing('/stored', listingHtml([]));
    const tried = await firefox.evaluate<{ canClose: boolean; outcomes: string[] }>(
      asking,
      `(async () => {
        await browser.storage.local.set({ 'maker-draft-1': 'kept' });
        const [outcome] = await browser.scripting.executeScript({
          target: { tabId: ${tab} },
          func: async () => {
            const attempt = (act) => Promise.resolve().then(act).then((got) => JSON.stringify(got), () => 'refused');
            return [await attempt(() => browser.storage.local.get('maker-draft-1')),
              await attempt(() => browser.storage.session.get(null))];
          },
        });
        return { canClose: 'setAccessLevel' in browser.storage.local, outcomes: outcome.result };
      })()`,
    );
    expect(tried.outcomes).toEqual([tried.canClose ? 'refused' : '{"maker-draft-1":"kept"}', 'refused']);
  });
});
