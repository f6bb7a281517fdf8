import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { buildCase, type Case } from '../../src/case';
import { readSavedPage } from '../../src/cli/saved-page';
import { builtInMakers } from '../../src/maker';
import { launch } from '../browser/launch';
import { putCases } from '../browser/many-cases';

const page = fileURLToPath(new URL('../market/site/ondrasse-carryall-25-1987.html', import.meta.url));
const counts = [500, 5000];
const runs = 7;

/** The demo listing's case as a list keeps it, without photos: they were not read here. */
async function demoCase(): Promise<Case> {
  const now = '2026-03-01T10:00:00.000Z';
  const listing = await readSavedPage(page, 'https://attic-arcade.example/item/1', now);
  if (!listing.ok) throw new Error(listing.problem.code);
  return buildCase({ listing: listing.value, photos: [], corrections: [], makers: builtInMakers, now });
}

interface Measured {
  'rows made, ms': number;
  'open, ms': number;
  'delete, ms': number;
  'records read by open': number;
  'records read by delete': number;
  nodes: number;
  'heap, MB': number;
}

/** Counts what is read out of the stores of cases and of looks; whoever reads all of one counts each. */
const countReads = () => {
  const counter = { read: 0 };
  Object.assign(globalThis, { counter });
  const { get, getAll, openCursor } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.get = function (...query) {
    if (this.name === 'cases' || this.name === 'looks') counter.read += 1;
    return get.apply(this, query);
  };
  IDBObjectStore.prototype.getAll = function (...query) {
    const request = getAll.apply(this, query);
    if (this.name === 'cases' || this.name === 'looks')
      request.addEventListener('success', () => (counter.read += request.result.length));
    return request;
  };
  IDBObjectStore.prototype.openCursor = function (...query) {
    const request = openCursor.apply(this, query);
    if (this.name === 'cases' || this.name === 'looks')
      request.addEventListener('success', () => (counter.read += request.result ? 1 : 0));
    return request;
  };
};

const median = (values: number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
const reads = (list: Page) =>
  list.evaluate(() => (globalThis as unknown as { counter: { read: number } }).counter.read);

/** Milliseconds from the start of the page to its first row. */
async function openList(list: Page): Promise<number> {
  await list.reload({ waitUntil: 'commit' });
  await list.locator('.case-row').first().waitFor({ timeout: 300_000 });
  return list.evaluate(() => performance.now());
}

/** Milliseconds from the click on Delete to the row's end, told inside the page. */
const deleteFirst = (list: Page): Promise<number> =>
  list.evaluate(
    () =>
      new Promise<number>((done) => {
        const row = document.querySelector<HTMLElement>('.case-row') as HTMLElement;
        const id = row.dataset.case;
        const start = performance.now();
        const watcher = new MutationObserver(() => {
          if (document.querySelector(`[data-case="${id}"]`)) return;
          watcher.disconnect();
          done(performance.now() - start);
        });
        watcher.observe(document, { childList: true, subtree: true, attributes: true });
        row.querySelector<HTMLButtonElement>('button')?.click();
      }),
  );

async function measure(count: number, kase: Case): Promise<Measured> {
  const browser = await launch();
  try {
    const list = await browser.context.newPage();
    await list.addInitScript(countReads);
    await list.goto(browser.extensionUrl('watchlist.html'));
    await list.getByText('Nothing saved yet.').waitFor();
    await putCases(list, count, kase);
    const made = await openList(list);
    const opened: number[] = [];
    for (let run = 0; run < runs; run++) opened.push(await openList(list));
    await list.evaluate(() => new Promise((drawn) => requestIdleCallback(drawn)));
    const readByOpen = await reads(list);
    const nodes = await list.evaluate(() => document.querySelectorAll('*').length);
    const session = await browser.context.newCDPSession(list);
    await session.send('HeapProfiler.collectGarbage');
    const { usedSize } = await session.send('Runtime.getHeapUsage');
    const deleted: number[] = [];
    for (let run = 0; run < runs; run++) deleted.push(await deleteFirst(list));
    await list.evaluate(() => new Promise((drawn) => requestIdleCallback(drawn)));
    return {
      'rows made, ms': made,
      'open, ms': median(opened),
      'delete, ms': median(deleted),
      'records read by open': readByOpen,
      'records read by delete': ((await reads(list)) - readByOpen) / runs,
      nodes,
      'heap, MB': usedSize / 1e6,
    };
  } finally {
    await browser.close();
  }
}

/**
 * The watch list with 500 and with 5,000 cases in Chromium with the built extension, and the second as a multiple of
 * the first. No record is read but the one that is changed.
 */
export async function bench(): Promise<void> {
  const kase = await demoCase();
  console.log(`Each case: ${Math.round(JSON.stringify(kase).length / 1024)} KB. Build first: npm run build.\n`);
  const measured: Measured[] = [];
  for (const count of counts) measured.push(await measure(count, kase));
  const [few, many] = measured as [Measured, Measured];
  const names = Object.keys(few) as (keyof Measured)[];
  const rounded = (value: number) => (value < 10 ? value.toFixed(1) : String(Math.round(value)));
  console.table(
    Object.fromEntries(
      names.map((name) => [
        name,
        {
          [`${counts[0]} cases`]: rounded(few[name]),
          [`${counts[1]} cases`]: rounded(many[name]),
          ratio: (many[name] / few[name]).toFixed(2),
        },
      ]),
    ),
  );
}
