import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { corners, fourFields, nearestCorner } from './far-photos';
import { Firefox, findFirefox } from './firefox';

const name = findFirefox();
if (name === null) console.log('Firefox: skipped, not installed ("apt-get install firefox-esr" brings it).');

describe.skipIf(name === null)('the sidebar of Firefox, opened by the toolbar', () => {
  let market: Market;
  let firefox: Firefox;
  /** A page of the add-on behind the others: it alone may look into the sidebar. */
  let behind: string;
  beforeAll(async () => {
    market = await startMarket();
    // Without any right at install: what the click gives is what is tested.
    firefox = await Firefox.start(name as string, []);
    behind = await firefox.open(firefox.extensionUrl('watchlist.html'), true);
  });
  afterAll(async () => {
    await firefox?.close();
    await market?.close();
  });

  const body = `browser.extension.getViews({ type: 'sidebar' })[0]?.document.body`;

  /** Waits until the sidebar comes to an expression over its `body`; gives what it shows then. */
  const until = (expression: string): Promise<string> =>
    firefox.evaluate<string>(
      behind,
      `new Promise((settle, fail) => {
        const started = Date.now();
        const look = () => {
          const body = ${body};
          if (body && (${expression})) return settle(body.innerText);
          if (Date.now() - started > 200000) return fail(new Error('the sidebar shows: ' + body?.innerText));
          setTimeout(look, 50);
        };
        look();
      })`,
    );
  const shows = (title: string) => `body.querySelector('.listing-title')?.innerText.includes(${JSON.stringify(title)})`;
  const done = `body.querySelector('[data-stage=done]')`;

  it('follows the tab in front and the click, and shows no listing beside another', async () => {
    const first = await firefox.open(`${market.url}ondrasse-carryall-25-1987.html`);
    await firefox.clickToolbar();
    const read = await until(`${shows('Carryall 25')} && ${done}`);
    expect(read).toContain('Page and 5 photos read.');
    expect(read).toContain('KV0978');

    // Another listing comes to the front: nothing of the first stands beside it, and it is not read unasked.
    const second = await firefox.open(`${market.url}calderwick-and-rook-ledger-32.html`);
    const asked = await until(`!${shows('Carryall 25')}`);
    expect(asked).not.toContain('KV0978');
    const lapsed = await until(`body.querySelector('[role=alert]')`);
    expect(lapsed).toContain('Tellstamp reads a page only when you ask.');

    // The click reads it, though the sidebar stands open.
    await firefox.clickToolbar();
    await until(`body.querySelector('.listing-title') && !${shows('Carryall 25')}`);

    // Back to the first: what was read of it is there at once, with nothing read again.
    await firefox.activate(first);
    const back = await until(shows('Carryall 25'));
    expect(back).toContain('Page and 5 photos read.');
    expect(back).toContain('KV0978');
    await firefox.activate(second);
    await until(`body.querySelector('.listing-title') && !${shows('Carryall 25')}`);
  }, 300_000);

  it('says of the next page of the same site that it has to be asked for, and not that the site is another', async () => {
    const tab = await firefox.open(`${market.url}ondrasse-carryall-25-1987.html`);
    await firefox.clickToolbar();
    await until(shows('Carryall 25'));
    await firefox.send('browsingContext.navigate', {
      context: tab,
      url: `${market.url}calderwick-and-rook-ledger-32.html`,
      wait: 'complete',
    });
    const moved = await until(`body.querySelector('[role=alert]')`);
    expect(moved).toContain('The tab shows another page now');
    expect(moved).not.toContain('another site');
    await firefox.clickToolbar();
    await until(`body.querySelector('.listing-title') && !${shows('Carryall 25')}`);
  }, 300_000);

  it('pictures a photo whose host lets no script fetch it, whole, and says so', async () => {
    const photos = await startMarket();
    photos.make('far.png', { type: 'image/png', body: await fourFields(1200, 900) });
    const far = `${photos.url}far.png`;
    market.make('far.html', {
      type: 'text/html; charset=utf-8',
      body: `<!doctype html><html lang="en"><head><title>Carryall</title></head><body><main><h1>Tessaro Vell Carryall</h1>
        <p>€540.00</p><div style="height: 3000px"></div><img src="${far}" alt="" width="400"></main></body></html>`,
    });
    await firefox.open(`${market.url}far.html`);
    await firefox.clickToolbar();
    const said = await until(`${shows('Tessaro Vell')} && ${done}`);
    expect(said).toContain('Page and 1 photo read, from a small copy on the page.');
    const strip = await firefox.evaluate<string>(behind, `${body}.querySelector('.photo-strip').textContent`);
    expect(strip).toContain('small copy, 400 of 1200 pixels wide');
    const seen = await firefox.evaluate<number[][]>(
      behind,
      `(async () => {
        // The picture itself: what is folded is not decoded by its element.
        const photo = await createImageBitmap(
          await (await fetch(${body}.querySelector('.photo-strip img').src)).blob());
        const { width, height } = photo;
        const pen = new OffscreenCanvas(width, height).getContext('2d');
        pen.drawImage(photo, 0, 0);
        return [[2, 2], [width - 3, 2], [width - 3, height - 3], [2, height - 3]].map(([x, y]) =>
          [...pen.getImageData(x, y, 1, 1).data].slice(0, 3));
      })()`,
    );
    expect(seen.map(nearestCorner)).toEqual([...corners]);
    await photos.close();
  }, 120_000);

  it('says what a tab shows that is no page: a picture by itself, a PDF document', async () => {
    market.make('alone.png', { type: 'image/png', body: await fourFields(300, 200) });
    market.make('alone.pdf', { type: 'application/pdf', body: smallestPdf });
    await firefox.open(`${market.url}alone.png`);
    await firefox.clickToolbar();
    expect(await until(`body.innerText.includes('This tab shows')`)).toContain('This tab shows a photo by itself.');
    await firefox.open(`${market.url}alone.pdf`);
    await firefox.clickToolbar();
    expect(await until(`body.innerText.includes('PDF')`)).toContain('his tab shows a PDF document');
  }, 120_000);
});

/** One empty page. */
const smallestPdf = `%PDF-1.4
1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj
2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj
3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 200 200]>>endobj
trailer<</Root 1 0 R>>
%%EOF`;
