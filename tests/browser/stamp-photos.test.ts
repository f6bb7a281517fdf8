import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenEngines, openEngines } from '../../src/cli/engines';
import { openPhotoFile } from '../../src/cli/photo-file';
import { type PhotoRead, photoReadSchema, readStamp } from '../../src/stamp';
import { type Browser, launch } from './launch';

const demo = new URL('../market/site/photos/', import.meta.url).pathname;
const rendered = new URL('../bench/stamp/photos/', import.meta.url).pathname;
const files = [
  ...readdirSync(demo).flatMap((file) => (file.includes('-stamp') ? [join(demo, file)] : [])),
  ...(existsSync(rendered)
    ? readdirSync(rendered).flatMap((file) => (/\.jpg$/.test(file) ? [join(rendered, file)] : []))
    : []),
];

let browser: Browser;
let open: OpenEngines;
beforeAll(async () => {
  [browser, open] = await Promise.all([launch(), openEngines()]);
});
afterAll(async () => {
  await Promise.all([browser?.close(), open?.close()]);
});

/** What a user would see of a read: texts and whether each is sure, not the last digits of a probability. */
const told = (read: PhotoRead) =>
  read.state === 'unread'
    ? read.problem.code
    : read.lines.map(({ free, engine, stampScore }) => ({
        engine,
        text: free.probability >= 0.5 ? free.text : 'unsure',
        sure: free.probability >= 0.9,
        stamp: stampScore >= 0.5,
      }));

it('reads every photograph in the extension as the command line does', async () => {
  const page = await browser.context.newPage();
  await page.goto(browser.extensionUrl('sidepanel.html'));
  const readInExtension = async (file: string): Promise<PhotoRead> => {
    const reply = await page.evaluate(
      async ({ base64, photoId }) => {
        const ask = (to: string, name: string, input: object) =>
          chrome.runtime.sendMessage({ tellstamp: 1, to, name, input }) as Promise<unknown>;
        await ask('background', 'reader.open', {});
        const adjustment = { crop: null, turn: 0, invert: false };
        return ask('reader', 'photo.read', { photoId, base64, adjustment });
      },
      { base64: readFileSync(file).toString('base64'), photoId: basename(file) },
    );
    const { value } = reply as { value: { read: unknown } };
    return photoReadSchema.parse(value.read);
  };
  const here: Record<string, unknown> = {};
  const there: Record<string, unknown> = {};
  for (const file of files) {
    const photo = await openPhotoFile(file);
    if (!photo.ok) throw new Error(photo.problem.what);
    here[basename(file)] = told(await readStamp(photo.value.image, basename(file), open.engines));
    there[basename(file)] = told(await readInExtension(file));
  }
  expect(files.length).toBeGreaterThanOrEqual(8);
  expect(there).toEqual(here);
}, 600_000);
