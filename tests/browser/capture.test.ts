import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { corners, cornersShown, type FarShop, fourFields, openFarShop, progressLine } from './far-photos';
import { openTab } from './launch';
import { openSidePanel, type SidePanel } from './toolbar';

let shop: FarShop;
let far: string;
beforeAll(async () => {
  shop = await openFarShop();
  far = shop.photo('bag.png', await fourFields(1200, 900));
});
afterAll(() => shop?.close());

/** Reads a page in the panel of its tab; `after` looks at what is shown before both are closed. */
async function read<T>(address: string, after: (panel: SidePanel, page: import('playwright-core').Page) => Promise<T>) {
  const { page, tabId } = await openTab(shop.browser, address);
  const panel = await openSidePanel(shop.browser, page, tabId);
  await panel.untilRead();
  const found = await after(panel, page);
  await panel.close();
  await page.close();
  return found;
}

describe('a photo whose host lets no script fetch it, in a real window', () => {
  it('is pictured from the page whole and in its place, and said to be a small copy, with its host offered', async () => {
    const address = shop.page('small.html', {
      photos: [far],
      css: `body { margin: 0 } .tall { height: 2000px } .gallery { height: 300px; overflow: auto; width: 500px }
        .gallery > div { height: 900px } img { width: 400px; padding: 20px; border: 10px solid black }`,
      body: `<div class="tall"></div><div class="gallery" id="gallery"><div></div><img src="${far}" alt=""></div>`,
      script: `document.getElementById('gallery').scrollTop = 37; scrollTo(0, 50);`,
    });
    const said = await read(address, async (panel, page) => ({
      corners: await cornersShown(panel),
      progress: await progressLine(panel),
      text: await panel.text(),
      page: await page.evaluate(() => [scrollY, document.getElementById('gallery')?.scrollTop]),
    }));
    expect(said.corners).toEqual([[...corners]]);
    expect(said.progress).toBe('Page and 1 photo read, from a small copy on the page.');
    expect(said.text).toContain('small copy, 400 of 1200 pixels wide');
    expect(said.text).toContain('The full size, 1200 pixels wide, is on photos.attic-arcade.example.');
    expect(said.text).toContain('Allow reading from photos.attic-arcade.example');
    // Nothing is held against the listing for the copy's size.
    expect(said.text).not.toContain('The largest photo is');
    expect(said.text).not.toContain('Could you send larger photos');
    expect(said.page).toEqual([50, 37]);
  });

  it.each([
    [
      'under a header that stays in place',
      'header { position: fixed; inset: 0 0 auto; height: 200px; background: #fff }',
      '<header>Attic &amp; Arcade</header>',
    ],
    [
      'under a bar that lets the pointer through',
      'header { position: fixed; inset: auto 0 0; height: 300px; background: #fff; pointer-events: none }',
      '<header>Cookies?</header>',
    ],
    [
      'behind a link without colour',
      'main { position: relative } .over { position: absolute; inset: 0 }',
      '<a class="over" href="#big"></a>',
    ],
    ['when it is not to be dragged', 'img { pointer-events: none; border-radius: 12px }', ''],
  ])('is pictured free %s', async (_name, css, over) => {
    const address = shop.page('over.html', {
      photos: [far],
      css: `.tall { height: 1500px } img { display: block; width: 480px } ${css}`,
      body: `<div class="tall"></div><img src="${far}" alt=""><div class="tall"></div>${over}`,
    });
    const seen = await read(address, cornersShown);
    // A rounded corner shows what lies behind it.
    if (!css.includes('radius')) expect(seen).toEqual([[...corners]]);
    expect(seen[0]).not.toBeNull();
  });

  it.each([
    [
      'a dialog',
      'dialog { width: 90vw; height: 90vh }',
      '<dialog id="over">Cookies?</dialog>',
      `document.getElementById('over').showModal()`,
    ],
    [
      'a veil',
      '.veil { position: fixed; inset: 0; background: rgb(0 0 0 / 0.6); pointer-events: none }',
      '<div class="veil"></div>',
      '',
    ],
  ])('is not taken for what lies over it: %s', async (_name, css, over, script) => {
    const address = shop.page('covered.html', {
      photos: [far],
      css: `img { width: 480px } ${css}`,
      body: `<img src="${far}" alt="">${over}`,
      script,
    });
    const said = await read(address, (panel) => panel.text());
    expect(said).toContain('something else on the page lies over the photo');
    expect(said).toContain('Close what lies over it and read again, allow its host, or type the code by hand.');
    expect(said).toContain('Allow reading from photos.attic-arcade.example');
  });

  it('is looked for where the page shows it best: not the faded slide, not the strip', async () => {
    const address = shop.page('many.html', {
      photos: [far],
      css: '.slide { opacity: 0.2; width: 700px } .strip { width: 60px } .main { width: 440px }',
      body: `<img class="slide" src="${far}" alt=""><img class="strip" src="${far}" alt=""><img class="main" src="${far}" alt="">`,
    });
    const said = await read(address, async (panel) => ({
      corners: await cornersShown(panel),
      text: await panel.text(),
    }));
    expect(said.corners).toEqual([[...corners]]);
    expect(said.text).toContain('small copy, 440 of 1200 pixels wide');
  });

  it('is pictured where the page draws it as a background', async () => {
    const address = shop.page('background.html', {
      photos: [far],
      css: `.photo { width: 480px; height: 360px; background: url("${far}") center / cover }`,
      body: '<div class="photo" role="img" aria-label="Front"></div>',
    });
    expect(await read(address, cornersShown)).toEqual([[...corners]]);
  });

  it('is not taken for a link without any colour that lies over it, nor looked for where it is not seen at all', async () => {
    const address = shop.page('unseen.html', {
      photos: [far],
      css: `.unseen { opacity: 0; width: 700px } .seen { width: 440px } .frame { position: relative; display: inline-block }
        .over { position: absolute; inset: 0; background: #fff; opacity: 0 }`,
      body: `<img class="unseen" src="${far}" alt=""><div class="frame"><img class="seen" src="${far}" alt=""><a class="over" href="#big"></a></div>`,
    });
    const said = await read(address, async (panel) => ({
      corners: await cornersShown(panel),
      text: await panel.text(),
    }));
    expect(said.corners).toEqual([[...corners]]);
    expect(said.text).toContain('small copy, 440 of 1200 pixels wide');
  });

  it('is found in a closed shadow tree', async () => {
    const address = shop.page('tree.html', {
      photos: [far],
      body: '<div id="host"></div>',
      script: `document.getElementById('host').attachShadow({ mode: 'closed' }).innerHTML =
        '<img src="${far}" alt="" style="width: 440px">';`,
    });
    expect(await read(address, cornersShown)).toEqual([[...corners]]);
  });

  it('is not taken from a slide that the page has faded', async () => {
    const address = shop.page('faded.html', {
      photos: [far],
      css: 'img { opacity: 0.1; width: 500px }',
      body: `<img src="${far}" alt="">`,
    });
    expect(await read(address, cornersShown)).toEqual([null]);
  });

  it('comes when it is scrolled to, though it waited for that', async () => {
    const address = shop.page('lazy.html', {
      photos: [far],
      css: '.tall { height: 9000px } img { width: 480px; height: 360px }',
      body: `<div class="tall"></div><img loading="lazy" src="${far}" alt="">`,
    });
    expect(await read(address, cornersShown)).toEqual([[...corners]]);
  });

  it('is said to be a part when the page cuts it, or the window holds no more', async () => {
    const cut = shop.page('cut.html', {
      photos: [far],
      css: 'img { width: 300px; height: 300px; object-fit: cover }',
      body: `<img src="${far}" alt="">`,
    });
    expect(await read(cut, (panel) => panel.text())).toContain('copy of the part that the page shows');
    const large = shop.page('large.html', {
      photos: [shop.photo('large.png', await fourFields(1000, 1200))],
      css: 'img { width: 1000px }',
      body: `<img src="http://photos.attic-arcade.example/large.png" alt="">`,
    });
    expect(await read(large, (panel) => panel.text())).toContain('copy of the part that the page shows');
  });

  it('is no small copy when it is shown pixel for pixel, and its host is not asked for', async () => {
    const exact = shop.photo('exact.png', await fourFields(640, 480));
    const address = shop.page('exact.html', { photos: [exact], body: `<img src="${exact}" alt="">` });
    const said = await read(address, async (panel) => `${await progressLine(panel)} ${await panel.text()}`);
    expect(said).toContain('Page and 1 photo read, from a copy on the page.');
    expect(said).not.toContain('Allow reading from');
    expect(said).not.toContain('The largest photo is');
  });

  it('is pictured pixel for pixel where the page is not drawn at whole pixels', async () => {
    const address = shop.page('odd.html', {
      photos: [far],
      css: 'body { margin: 0.37px 0.41px } main { padding: 3.3px } img { width: 421.7px; border: 7px solid black }',
      body: `<img src="${far}" alt="">`,
    });
    expect(await read(address, cornersShown)).toEqual([[...corners]]);
  });
});
