import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ReaderAnswer } from '../../src/reader/worker-messages';
import { stampLinesOf } from '../../src/stamp';
import { type Browser, launch } from './launch';
import { WorkerPage } from './worker-page';

/** Switches on Chromium's software graphics card, which stands for a real one on machines without. */
const softwareCard = ['--enable-unsafe-webgpu', '--use-webgpu-adapter=swiftshader', '--enable-features=Vulkan,WebGPU'];

const stamp = new URL('../market/site/photos/l2-stamp.jpg', import.meta.url).pathname;
/** Texts and decisions of an answer, and its probabilities to two digits. */
const toldBy = ({ view }: ReaderAnswer) =>
  view?.read.state === 'read'
    ? stampLinesOf(view.read).map(({ free, stampScore, engine }) => ({
        engine,
        text: free.text,
        probability: free.probability.toFixed(2),
        stampScore: stampScore.toFixed(2),
      }))
    : view;

describe('the nets on a graphics card', () => {
  let browser: Browser;
  let small: string;
  beforeAll(async () => {
    browser = await launch({ flags: softwareCard });
    // The stamp alone: a software card takes a second for what a real one does in a hundredth.
    const cut = sharp(stamp).extract({ left: 280, top: 300, width: 560, height: 230 }).resize(224);
    small = (await cut.jpeg({ quality: 95 }).toBuffer()).toString('base64');
  });
  afterAll(() => browser?.close());

  it('read what plain WASM reads, in the worker, from the extension’s own files', async () => {
    const plain = await WorkerPage.open(browser, {});
    const expected = await plain.read(small);
    const onCard = await WorkerPage.open(browser, { adapter: 'any' });
    await onCard.hears('the nets run on the graphics card');
    // Twice: the first photo on the card is computed both ways, the second by the card alone.
    await onCard.read(small);
    const answer = await onCard.read(small);
    expect(answer).toMatchObject({ runtime: 'webgpu' });
    expect(toldBy(answer)).toEqual(toldBy(expected));
    expect(toldBy(answer)).toMatchObject([{ engine: 'net', text: 'KV0978' }]);
    expect(onCard.words.filter((word) => word.includes('run on the processor'))).toEqual([]);

    // The graphics process ends, as when a driver is reset, and the device is lost.
    const wholeBrowser = await browser.context.browser()?.newBrowserCDPSession();
    await wholeBrowser?.send('Browser.crashGpuProcess');
    const after = await onCard.read(small);
    expect(after).toMatchObject({ runtime: 'wasm' });
    expect(toldBy(after)).toEqual(toldBy(expected));
    expect(onCard.words.join('\n')).toMatch(/the nets run on the processor/);
  }, 300_000);

  it('do not run on a software card for a user: its worker stays on WASM and loads no other runtime', async () => {
    const plain = await WorkerPage.open(browser, {});
    const loaded: string[] = [];
    plain.page.on('request', (request) => loaded.push(request.url()));
    expect(await plain.read(small)).toMatchObject({ runtime: 'wasm' });
    expect(await plain.read(small)).toMatchObject({ runtime: 'wasm' });
    expect(loaded.filter((address) => address.includes('jspi'))).toEqual([]);
  }, 120_000);
});
