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
    // The page shows no photo at all: the right is offered all the same.
    expect(said).toContain('Allow reading from localhost');
    await browser.close();
  });

  it('is read with it, and then nothing is said to be missing', async () => {
    browser = await launch({ hosts: ['http://localhost/*'] });
    const said = await readIn(browser, 'framed.html');
    expect(said).toContain('Belgium');
    expect(said).not.toContain('was not read');
    expect(said).not.toContain('Allow reading');
    expect(said).not.toContain('Not shown');
  });

  it('is read beside a frame that never finishes loading', async () => {
    const said = await readIn(browser, 'endless.html');
    expect(said).toContain('Belgium');
  });
});

describe('photos that the page made itself', () => {
  let browser: Browser;
  afterAll(() => browser?.close());

  it('are handed over by the page, also when it has withdrawn their addresses, and drawings as what they show', async () => {
    shop.make('made.html', {
      type: 'text/html; charset=utf-8',
      body: `<!doctype html><html lang="en" data-ready="no"><head><title>Ondrasse Carryall 30</title></head><body>
        <main><h1>Ondrasse Carryall 30</h1><p>€540.00</p><img alt="front"><img alt="back"><img alt="side">
        <img alt="drawing"><img alt="drawing of words"></main><script>
        const drawn = async (colour) => {
          const canvas = new OffscreenCanvas(640, 480);
          const pen = canvas.getContext('2d');
          pen.fillStyle = colour;
          pen.fillRect(0, 0, 640, 480);
          return canvas.convertToBlob();
        };
        // A canvas that drew this one may not be looked into: what is left is a picture of the tab.
        const words = '<foreignObject width="640" height="480"><p xmlns="http://www.w3.org/1999/xhtml"> </p></foreignObject>';
        const drawing = (colour, inside) => new Blob(['<svg xmlns="http://www.w3.org/2000/svg" width="640" height="480">'
          + '<rect width="640" height="480" fill="' + colour + '"/>' + inside + '</svg>'], { type: 'image/svg+xml' });
        (async () => {
          const [, back, side] = document.images;
          const blobs = [await drawn('#7a3b23'), await drawn('#237a3b'), drawing('#3b237a', words),
            drawing('#7a233b', ''), drawing('#3b7a23', words)];
          for (const [at, image] of [...document.images].entries()) {
            image.src = URL.createObjectURL(blobs[at]);
            await image.decode();
          }
          URL.revokeObjectURL(back.src);
          URL.revokeObjectURL(side.src);
          document.documentElement.dataset.ready = 'yes';
        })();</script></body></html>`,
    });
    browser = await launch({ window: { width: 1100, height: 800 } });
    const { page: tab, tabId } = await openTab(browser, `${shop.url}made.html`);
    await tab.waitForFunction(() => document.documentElement.dataset.ready === 'yes');
    const panel = await openSidePanel(browser, tab, tabId);
    await panel.untilRead();
    expect(await panel.evaluate(`document.querySelector('.progress-line').textContent`)).toBe(
      'Page and 5 photos read, 2 of them from copies on the page.',
    );
    const middles = await panel.evaluate<number[][]>(`Promise.all(
      [...document.querySelectorAll('.photo-strip img')].map(async (photo) => {
        await photo.decode();
        const pen = new OffscreenCanvas(photo.naturalWidth, photo.naturalHeight).getContext('2d');
        pen.drawImage(photo, 0, 0);
        return [...pen.getImageData(photo.naturalWidth / 2, photo.naturalHeight / 2, 1, 1).data].slice(0, 3);
      }))`);
    // Each its own colour, give or take what JPEG changes.
    const near = middles.map((middle) =>
      middle.map((channel) => [35, 59, 122].find((one) => Math.abs(channel - one) < 12)),
    );
    expect(near, JSON.stringify(middles)).toEqual([
      [122, 59, 35],
      [35, 122, 59],
      [59, 35, 122],
      [122, 35, 59],
      [59, 122, 35],
    ]);
    await panel.close();
    await tab.close();
  });
});
