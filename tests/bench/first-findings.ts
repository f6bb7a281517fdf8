import { readdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { launch, openPanel, openTab } from '../browser/launch';
import { clickToolbar } from '../browser/toolbar';
import { startMarket } from '../market/server';

/** How soon the first findings have to stand, in times of what the page's own first photo alone takes. */
const most = 4;
const runs = 5;
const listings = readdirSync(new URL('../market/site/', import.meta.url)).filter((name) =>
  /^(ondrasse|calderwick|tessaro).*\.html$/.test(name),
);

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
const times = (ratio: number): string => `${ratio.toFixed(1)} ×`;

/** Notes when the case's head first stands in the panel, in milliseconds from where its document begins. */
const watchHead = () => {
  const noted: { at: number | null } = { at: null };
  Object.assign(globalThis, { noted });
  new MutationObserver(() => {
    if (noted.at === null && document.querySelector('.head-lines')) noted.at = performance.now();
  }).observe(document, { childList: true, subtree: true });
};

const findingsAfter = async (panel: Page): Promise<number> => {
  const at = await panel.waitForFunction(() => {
    const { noted } = globalThis as unknown as { noted: { at: number | null } };
    return noted.at;
  });
  return (await at.jsonValue()) ?? 0;
};

/** Fetches and decodes the page's first photo, past the cache, and nothing else. */
const firstPhoto = (page: Page, address: string): Promise<number> =>
  page.evaluate(async (photo) => {
    const from = performance.now();
    const answer = await fetch(photo, { cache: 'no-store' });
    const picture = await createImageBitmap(await answer.blob());
    picture.close();
    return performance.now() - from;
  }, address);

/** A household's line: both the photo and what the panel asks for go over it. */
const line = { offline: false, latency: 40, downloadThroughput: 1_250_000, uploadThroughput: 250_000 };
const overLine = async (page: Page): Promise<void> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', line);
};

/**
 * How soon the panel shows the first findings of a listing, against fetching and decoding nothing but the page's own first
 * photo, in the same browser: over a household's line, and from the server beside it, where a photo takes next to no
 * time. Only ratios of one run; the panel is opened anew each time, so that the time of its own start is in them.
 */
export async function bench(): Promise<void> {
  const market = await startMarket();
  const browser = await launch();
  const rows: Record<string, string>[] = [];
  const ratios = { line: [] as number[], beside: [] as number[] };
  for (const name of listings) {
    const taken = { found: [] as number[], line: [] as number[], beside: [] as number[] };
    for (let run = 0; run < runs; run += 1) {
      const { page, tabId } = await openTab(browser, `${market.url}${name}`);
      const photo = await page
        .locator('main img')
        .first()
        .evaluate((one: HTMLImageElement) => one.currentSrc);
      taken.beside.push(await firstPhoto(page, photo));
      await overLine(page);
      taken.line.push(await firstPhoto(page, photo));
      await clickToolbar(browser, page);
      const panel = await openPanel(browser, tabId, watchHead);
      taken.found.push(await findingsAfter(panel));
      await Promise.all([panel.close(), page.close()]);
    }
    const found = median(taken.found);
    ratios.line.push(found / median(taken.line));
    ratios.beside.push(found / median(taken.beside));
    rows.push({
      listing: name.replace('.html', ''),
      'of its first photo over the line': times(found / median(taken.line)),
      'of its first photo from beside': times(found / median(taken.beside)),
    });
  }
  await browser.close();
  await market.close();
  console.table(rows);
  console.log(
    `median ${times(median(ratios.line))} and ${times(median(ratios.beside))}; asked for: at most ${times(most)}`,
  );
}
