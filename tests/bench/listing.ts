import { parseHTML } from 'linkedom';
import { findChromium } from '../../src/cli/find-chromium';
import { readListing } from '../../src/listing';
import { openReadingBrowser } from '../hostile/reading-browser';
import { contentScriptSize } from '../listing-pages/content-script';
import { largePage } from '../listing-pages/large-page';
import {
  accuracyWords,
  asideTruths,
  pageHtml,
  precisionAndRecall,
  scoreAll,
  scoredFields,
  truths,
} from '../listing-pages/score';
import { printMessy } from './messy';

const frameMs = 1000 / 60;

const now = '2026-03-01T12:00:00Z';

const median = (values: number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

async function medianMs(work: () => unknown, runs = 9): Promise<number> {
  const times: number[] = [];
  for (let run = 0; run < runs + 2; run += 1) {
    const start = performance.now();
    await work();
    if (run >= 2) times.push(performance.now() - start);
  }
  return median(times);
}

const percent = (share: number): string => `${(share * 100).toFixed(1)}%`;
const times = (a: number, b: number): string => (b > 0 ? `${(a / b).toFixed(1)}×` : '–');

async function printAccuracy(): Promise<void> {
  const scores = await scoreAll();
  const line = (name: string, own: typeof scores) => {
    const { precision, recall, there } = precisionAndRecall(own);
    return { field: name, precision: percent(precision), recall: percent(recall), 'on pages': there };
  };
  const { what, result } = accuracyWords(scores);
  console.log(`${what}: ${result}.`);
  console.table([
    ...scoredFields.map((field) =>
      line(
        field,
        scores.filter((one) => one.field === field),
      ),
    ),
    line('all', scores),
  ]);
  const aside = await scoreAll(asideTruths);
  const { precision, recall, there } = precisionAndRecall(aside);
  console.log(
    `${Object.keys(asideTruths).length} pages set aside before any was read, opened once on 2026-11-29: ` +
      `precision ${percent(precision)} and recall ${percent(recall)} of ${there} fields.`,
  );
  for (const { page, field, mark, given, truth } of aside)
    if (mark !== 'right' && mark !== 'silent') console.log(`  ${page}: ${field} ${mark}: ${given} (true: ${truth})`);
}

/** The JSON-LD texts of a page's HTML. */
const dataOf = (html: string): string[] =>
  [...html.matchAll(/<script type="application\/ld\+json">([\s\S]*?)<\/script>/g)].map((match) => match[1] as string);

type Extractor = () => { parse(html: string): unknown };

async function printTimes(): Promise<void> {
  const { default: imported } = (await import('web-auto-extractor')) as unknown as {
    default: Extractor | { default: Extractor };
  };
  const extractor = typeof imported === 'function' ? imported : imported.default;
  const rows: Record<string, string | number>[] = [];
  const pages = [
    ...Object.keys(truths)
      .filter((name) => dataOf(pageHtml(name)).length > 0)
      .map((name) => [name, pageHtml(name)] as const),
    ['1 MB page', largePage()] as const,
  ];
  for (const [name, html] of pages) {
    const document = () => parseHTML(html).document as unknown as Document;
    const parsed = await medianMs(() => document());
    const whole = await medianMs(() =>
      readListing(document(), { url: truths[name]?.url ?? 'https://attic-arcade.example/1', now }),
    );
    const other = await medianMs(() => extractor().parse(html));
    const data = await medianMs(() => dataOf(html).map((text) => JSON.parse(text)));
    rows.push({
      page: name,
      'JSON.parse ms': Number(data.toFixed(3)),
      'document + reading ms': Number(whole.toFixed(1)),
      'of it document ms': Number(parsed.toFixed(1)),
      'web-auto-extractor ms': Number(other.toFixed(1)),
      'ours : extractor': times(whole, other),
      'reading : JSON.parse': times(whole - parsed, data),
    });
  }
  console.log(
    'Time per page in Node (median of 9). The extractor reads data only; ours reads the visible page, photos and terms as well.',
  );
  console.table(rows);
}

async function printSlices(): Promise<void> {
  if (findChromium() === null) return console.log('No Chromium: the time that a page loses was not measured.');
  const browser = await openReadingBrowser('/nowhere');
  try {
    const html = largePage();
    const runs = [];
    for (let run = 0; run < 5; run += 1) runs.push(await browser.read('large.html', html, true));
    const clock = runs.map(({ longestMs }) => longestMs);
    const tasks = runs.map(({ longestTaskMs }) => longestTaskMs ?? 0);
    const frames = (ms: number) => `${(ms / frameMs).toFixed(2)} frames`;
    console.log(
      `1 MB page in Chromium (${(html.length / 1e6).toFixed(2)} MB), 5 runs. Longest stretch without giving the page its turn: ` +
        `${median(tasks).toFixed(1)} ms of processor time = ${frames(median(tasks))} of 16.7 ms (worst ${frames(Math.max(...tasks))}); ` +
        `by the clock, which a busy machine lengthens, ${median(clock).toFixed(1)} ms = ${frames(median(clock))}. ` +
        `Whole reading, pauses included: ${median(runs.map(({ totalMs }) => totalMs)).toFixed(0)} ms.`,
    );
  } finally {
    await browser.close();
  }
}

/** Accuracy, time, slices and size of the listing reader. */
export async function bench(): Promise<void> {
  await printAccuracy();
  await printMessy();
  await printTimes();
  await printSlices();
  const { bytes, gzipped } = await contentScriptSize();
  console.log(`Page script: ${(bytes / 1024).toFixed(1)} kB, ${(gzipped / 1024).toFixed(1)} kB gzipped of 47 allowed.`);
}
