import { readdirSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { type Browser, launch, openTab } from '../browser/launch';
import { clickToolbar, SidePanel } from '../browser/toolbar';
import { startMarket } from '../market/server';

/** How soon the first findings have to stand, in times of what the page's own first photo alone takes. */
const most = 4;
const runs = 5;
const site = new URL('../market/site/', import.meta.url);
const listings = readdirSync(site).filter((name) => /^(ondrasse|calderwick|tessaro).*\.html$/.test(name));

/**
 * What stands for a listing's first photo. The demo's own are small renderings of few bytes; what marketplaces show in
 * large, and what a phone takes, is drawn from one of them, with the grain of a sensor. Sizes: common practice, no source.
 */
const yardsticks = { large: { width: 1600, height: 1200 }, phone: { width: 4000, height: 3000 } } as const;
type Yardstick = 'own' | keyof typeof yardsticks;
const names: Yardstick[] = ['own', 'large', 'phone'];

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
const times = (ratio: number): string => `${ratio.toFixed(1)} ×`;

async function photoOf(size: { width: number; height: number }): Promise<Buffer> {
  const grain = await sharp({
    create: { ...size, channels: 3, background: '#808080', noise: { type: 'gaussian', mean: 128, sigma: 20 } },
  })
    .png()
    .toBuffer();
  return sharp(readFileSync(new URL('photos/l1-front.jpg', site)))
    .resize({ ...size, fit: 'cover' })
    .composite([{ input: grain, blend: 'soft-light' }])
    .jpeg({ quality: 82 })
    .toBuffer();
}

/** Fetches and decodes one photo, past the cache, and nothing else. */
const onePhoto = (page: Page, address: string): Promise<number> =>
  page.evaluate(async (photo) => {
    const from = performance.now();
    const answer = await fetch(photo, { cache: 'no-store' });
    const picture = await createImageBitmap(await answer.blob());
    picture.close();
    return performance.now() - from;
  }, address);

/** A household's line: both the photos and what the page is asked for go over it. */
const line = { offline: false, latency: 40, downloadThroughput: 1_250_000, uploadThroughput: 250_000 };
const overLine = async (page: Page): Promise<void> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', line);
};

/** From the press of the button until the case's head stands in the side panel, and of that the panel's own part. */
async function findingsAfter(browser: Browser, page: Page, tabId: number): Promise<{ all: number; own: number }> {
  const pressed = Date.now();
  await clickToolbar(browser, page);
  const panel = await SidePanel.of(browser, tabId);
  const { at, begun } = await panel.evaluate<{ at: number; begun: number }>(`new Promise((settle) => {
    const look = () => {
      if (document.querySelector('.head-lines'))
        settle({ at: performance.timeOrigin + performance.now(), begun: performance.timeOrigin });
    };
    new MutationObserver(look).observe(document, { childList: true, subtree: true });
    look();
  })`);
  await panel.close();
  return { all: at - pressed, own: at - begun };
}

/**
 * How soon the panel shows the first findings of a listing after its button was pressed, against fetching and decoding
 * nothing but one photo in the same browser: the listing's own small one, one as marketplaces serve it, and one as a
 * phone takes it, each over a household's line and from the server beside it, where a photo takes next to no time. Only
 * ratios of one run; the panel opens anew each time, so that the browser's work of opening it is in them.
 */
export async function bench(): Promise<void> {
  const market = await startMarket();
  const sizes: string[] = [];
  for (const [name, size] of Object.entries(yardsticks)) {
    const body = await photoOf(size);
    market.make(`photos/${name}.jpg`, { type: 'image/jpeg', body });
    sizes.push(`${name}: ${size.width} × ${size.height} px, ${Math.round(body.length / 1000)} KB`);
  }
  const browser = await launch();
  const rows: Record<string, string>[] = [];
  const ratios = new Map<string, number[]>();
  const opening: number[] = [];
  for (const listing of listings) {
    const found: number[] = [];
    const taken = new Map<string, number[]>();
    const note = (column: string, ms: number) => taken.set(column, [...(taken.get(column) ?? []), ms]);
    for (let run = 0; run < runs; run += 1) {
      const { page, tabId } = await openTab(browser, `${market.url}${listing}`);
      // On a busy machine a page stands before its photo, or with what holds its place.
      await page.waitForFunction(() => {
        const first = document.querySelector<HTMLImageElement>('main img');
        return first?.complete && first.naturalWidth > 1;
      });
      const own = await page
        .locator('main img')
        .first()
        .evaluate((one: HTMLImageElement) => one.currentSrc);
      const photos = names.map((name) => [name, name === 'own' ? own : `${market.url}photos/${name}.jpg`] as const);
      for (const [name, address] of photos) note(`${name}, from beside`, await onePhoto(page, address));
      await overLine(page);
      for (const [name, address] of photos) note(`${name}, over the line`, await onePhoto(page, address));
      const { all, own: ownPart } = await findingsAfter(browser, page, tabId);
      found.push(all);
      opening.push(1 - ownPart / all);
      await page.close();
    }
    const row: Record<string, string> = { listing: listing.replace('.html', '') };
    for (const [column, ms] of taken) {
      const ratio = median(found) / median(ms);
      ratios.set(column, [...(ratios.get(column) ?? []), ratio]);
      row[column] = times(ratio);
    }
    rows.push(row);
  }
  await browser.close();
  await market.close();
  console.log(`first findings, in times of one photo alone (${sizes.join('; ')}; the line: 10 Mbit/s, 40 ms)`);
  console.table(rows);
  console.table([Object.fromEntries([...ratios].map(([column, all]) => [column, times(median(all))]))]);
  console.log(
    `asked for: at most ${times(most)}; of the time, the browser's opening of the panel took ${(median(opening) * 100).toFixed(0)} %`,
  );
}
