import { readFileSync } from 'node:fs';
import { cp, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { built, launch, openTab } from '../browser/launch';
import { debuggerOf, openSidePanel } from '../browser/toolbar';
import { listingPage } from '../market/listing-page';
import { type Market, startMarket } from '../market/server';
import { listingPhotos } from './stamp/speed';

/** Another build to measure beside this one, as the one before a change. */
const before = process.env.PHOTO_WAY_BEFORE;
const runs = Number(process.env.PHOTO_WAY_RUNS ?? 3);

interface Way {
  name: string;
  folder: string;
  /** Cores that the browser tells of: with four, two photos are read at once. */
  cores: number;
}

/** A listing of every other photo of the speed bench, all of 1200 × 900. */
async function makeListing(market: Market): Promise<number> {
  const files = (await listingPhotos()).filter((_, at) => at % 2 === 0);
  const urls = files.map((file, at) => {
    market.make(`p/${at}.jpg`, { type: 'image/jpeg', body: readFileSync(file) });
    return `${market.url}p/${at}.jpg`;
  });
  market.make('twelve.html', listingPage(urls));
  return files.length;
}

/** A copy of a build whose pages are told of another machine. */
const told = (folder: string, cores: number) => async (copy: string) => {
  await rm(copy, { recursive: true });
  await cp(folder, copy, { recursive: true });
  const machine = JSON.stringify({ hardwareConcurrency: cores, deviceMemory: 8 });
  const script = `for (const [name, value] of Object.entries(${machine})) Object.defineProperty(navigator, name, { get: () => value });`;
  await writeFile(join(copy, 'machine.js'), script);
  for (const page of ['sidepanel.html', 'reader.html']) {
    const html = await readFile(join(copy, page), 'utf8');
    await writeFile(join(copy, page), html.replace('<head>', '<head><script src="/machine.js"></script>'));
  }
};

/** Of each run: milliseconds from the first findings until all photos are read, and processor time of the browser in all. */
async function taken(market: Market, { folder, cores }: Way): Promise<{ ms: number; processorMs: number }[]> {
  const browser = await launch({ window: { width: 1100, height: 800 }, change: told(folder, cores) });
  try {
    const session = await debuggerOf(browser);
    const spent = async (): Promise<number> => {
      const { processInfo } = await session.send('SystemInfo.getProcessInfo');
      return processInfo.reduce((sum, { cpuTime }) => sum + cpuTime * 1000, 0);
    };
    const all: { ms: number; processorMs: number }[] = [];
    // The first run compiles.
    for (let run = 0; run <= runs; run++) {
      const { page, tabId } = await openTab(browser, `${market.url}twelve.html`);
      const from = await spent();
      const panel = await openSidePanel(browser, page, tabId);
      await panel.until(`document.querySelector('.head-lines')`);
      const begun = performance.now();
      await panel.untilRead();
      if (run > 0) all.push({ ms: performance.now() - begun, processorMs: (await spent()) - from });
      await panel.close();
      await page.close();
    }
    return all;
  } finally {
    await browser.close();
  }
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

/**
 * The whole way of a listing's photos in the panel, from its first findings until all are read: one photo at a time, and
 * two at once as where a machine has four cores. Ratios to the first row of the same run. Needs the build (`npm run build`).
 */
export async function bench(): Promise<void> {
  const market = await startMarket();
  const photos = await makeListing(market);
  const ways: Way[] = [
    ...(before === undefined ? [] : [{ name: 'the build before', folder: before, cores: 2 }]),
    { name: 'one photo at a time', folder: built, cores: 2 },
    { name: 'two at once', folder: built, cores: 4 },
  ];
  const rows: { name: string; ms: number; processorMs: number }[] = [];
  for (const way of ways) {
    const all = await taken(market, way);
    const [ms, processorMs] = [median(all.map((one) => one.ms)), median(all.map((one) => one.processorMs))];
    rows.push({ name: way.name, ms: ms / photos, processorMs: processorMs / photos });
  }
  await market.close();
  const [first] = rows;
  const against = (value: number, other: number | undefined) =>
    `${value.toFixed(0)} (${(value / (other ?? 1)).toFixed(2)})`;
  console.log(`${photos} photos of 1200 × 900 in the panel; in brackets the ratio to the first row of this run`);
  console.table(
    rows.map(({ name, ms, processorMs }) => ({
      way: name,
      'ms a photo': against(ms, first?.ms),
      'processor ms a photo': against(processorMs, first?.processorMs),
    })),
  );
}
