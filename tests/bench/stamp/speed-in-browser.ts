import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { printedIn } from '../../../src/photo';
import type { ReaderAnswer, ReaderRequest } from '../../../src/reader/worker-messages';
import { type Browser, built, launch } from '../../browser/launch';

/**
 * The reader as the extension runs it, in Chromium: its worker reads JPEG photos one after the other in a process of
 * the extension's own. Resident memory is the whole process's, with the browser's own code in it, which the row before
 * the start shows; and with some 30 MB that only the runner's debugger takes, which keeps each file that the page and its
 * workers fetch as base64. Needs the build (`npm run build`); null where a process's memory is not told (`/proc`, Linux).
 */
export async function speedInBrowser(files: readonly string[]): Promise<Record<string, string>[] | null> {
  if (process.platform !== 'linux') return null;
  const browser = await launch();
  try {
    const page = await browser.context.newPage();
    await page.goto(browser.extensionUrl('reader.html'));
    const pid = await extensionProcess(browser);
    const rows = [{ 'in Chromium': 'before the worker starts', ...memoryOf(pid) }];
    forgetPeak(pid);
    const worker = readdirSync(join(built, 'assets')).find((file) => file.startsWith('worker-'));
    await page.evaluate((file) => {
      const reader = new Worker(`/assets/${file}`, { type: 'module' });
      Object.assign(globalThis, { reader });
      reader.postMessage({ kind: 'start', files: `${location.origin}/` } satisfies ReaderRequest);
    }, worker);
    // A picture of nothing is answered as soon as the nets are there.
    const speck = sharp({ create: { width: 64, height: 64, channels: 3, background: '#8a5a2b' } });
    const pictures = [await speck.jpeg().toBuffer(), ...files.map((file) => readFileSync(file))];
    const took: number[] = [];
    let words = 0;
    let peak = 0;
    for (const [at, picture] of pictures.entries()) {
      const answer = await page.evaluate(
        async ([id, base64]) => {
          const file = URL.createObjectURL(await (await fetch(`data:;base64,${base64}`)).blob());
          return new Promise<ReaderAnswer & { ms: number }>((settle) => {
            const { reader } = globalThis as unknown as { reader: Worker };
            const from = performance.now();
            // No function with a name of its own in here: the runner's compiler would add a call that the page lacks.
            reader.addEventListener('message', ({ data }) => settle({ ...data, ms: performance.now() - from }), {
              once: true,
            });
            const adjustment = { crop: null, turn: 0, invert: false } as const;
            reader.postMessage({ kind: 'read', id, photoId: `p${id}`, file, adjustment } satisfies ReaderRequest);
          });
        },
        [at + 1, picture.toString('base64')] as const,
      );
      if (answer.view?.read.state !== 'read') throw new Error(`photo ${at} was not read`);
      words += printedIn(answer.view.read).length;
      took.push(answer.ms);
      // Chromium sets the peak back now and then, for figures of its own.
      peak = Math.max(peak, megabytes(pid, 'VmHWM'));
    }
    const [start = 0, first = 0, ...later] = took;
    const median = later.toSorted((a, b) => a - b)[later.length >> 1] ?? 0;
    return [
      ...rows,
      {
        'in Chromium': `${files.length} photos${words > 0 ? ', print reader started' : ''}`,
        ...memoryOf(pid, peak),
        'ms to start': start.toFixed(0),
        'ms first photo': first.toFixed(0),
        'ms a photo, median': median.toFixed(0),
      },
    ];
  } finally {
    await browser.close();
  }
}

/** The process of the extension's pages and workers, among those of this browser alone. */
async function extensionProcess(browser: Browser): Promise<number> {
  const session = await browser.context.browser()?.newBrowserCDPSession();
  const answer = await session?.send('SystemInfo.getProcessInfo');
  const found = answer?.processInfo.find(({ id }) =>
    readFileSync(`/proc/${id}/cmdline`, 'utf8').includes('--extension-process'),
  );
  if (found === undefined) throw new Error('The extension has no process of its own.');
  return found.id;
}

const memoryOf = (pid: number, peak = megabytes(pid, 'VmHWM')): { 'memory now, MB': string; 'peak, MB': string } => ({
  'memory now, MB': megabytes(pid, 'VmRSS').toFixed(0),
  'peak, MB': peak.toFixed(0),
});

const megabytes = (pid: number, name: 'VmRSS' | 'VmHWM'): number =>
  Number(new RegExp(`${name}:\\s+(\\d+)`).exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024;

/** Sets the peak back to what is resident now (proc(5), `clear_refs`, value 5). */
const forgetPeak = (pid: number): void => writeFileSync(`/proc/${pid}/clear_refs`, '5');
