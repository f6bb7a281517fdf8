import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { ReaderAnswer, ReaderRequest } from '../../src/reader/worker-messages';
import { type Browser, built } from './launch';

const workerFile = readdirSync(join(built, 'assets')).find((file) => file.startsWith('worker-')) ?? 'worker not built';

/** The reader's worker, started by a page of the extension with the message that the product sends, and one word more. */
export class WorkerPage {
  private constructor(
    readonly page: Page,
    readonly words: string[],
  ) {}

  static async open(browser: Browser, start: { adapter?: 'any' }): Promise<WorkerPage> {
    const page = await browser.context.newPage();
    const words: string[] = [];
    browser.context.on('console', (message) => words.push(message.text()));
    await page.goto(browser.extensionUrl('reader.html'));
    await page.evaluate(
      ([file, more]) => {
        const worker = new Worker(`/assets/${file}`, { type: 'module' });
        Object.assign(globalThis, { reader: worker });
        worker.postMessage({ kind: 'start', files: `${location.origin}/`, ...more } satisfies ReaderRequest);
      },
      [workerFile, start] as const,
    );
    return new WorkerPage(page, words);
  }

  read(base64: string): Promise<ReaderAnswer> {
    return this.page.evaluate(async (bytes) => {
      const file = URL.createObjectURL(await (await fetch(`data:;base64,${bytes}`)).blob());
      return new Promise<ReaderAnswer>((settle) => {
        const { reader } = globalThis as unknown as { reader: Worker };
        reader.addEventListener('message', ({ data }) => settle(data), { once: true });
        const adjustment = { crop: null, turn: 0, invert: false } as const;
        reader.postMessage({ kind: 'read', id: 1, photoId: 'p1', file, adjustment } satisfies ReaderRequest);
      });
    }, base64);
  }

  /** Waits until the worker has said so; the time limit is the test's own. */
  async hears(words: string): Promise<void> {
    while (!this.words.some((word) => word.includes(words)))
      await this.page.context().waitForEvent('console', { timeout: 0 });
  }
}
