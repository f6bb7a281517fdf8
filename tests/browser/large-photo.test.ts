import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { stampLinesOf } from '../../src/stamp';
import { type Browser, launch } from './launch';
import { openAsking, readInExtension } from './reader-messages';

const file = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url));
/** Where the stamp is laid, and how wide its photograph is there: its characters are 21 pixels tall. */
const [left, top, wide] = [3900, 2600, 742];

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());

/** A photo of 24 million pixels: a clear stamp of the committed photographs on leather eight times as wide. */
async function largePhoto(): Promise<Buffer> {
  const stamp = await sharp(file('photos/stamps/clear-02.jpg')).resize(wide).toBuffer();
  return sharp(file('market/site/photos/l1-front.jpg'))
    .resize(6000, 4000, { fit: 'cover' })
    .blur(2)
    .composite([{ input: stamp, left, top }])
    .jpeg({ quality: 88 })
    .toBuffer();
}

it('a small stamp in a photo of 24 million pixels is read in parts that the browser cuts from the file', async () => {
  const asking = await openAsking(browser);
  const large = await largePhoto();
  const read = await readInExtension(asking, 'large', large);
  const [line] = stampLinesOf(read).filter(({ free }) => free.text === '8509-TI');
  expect(line?.free.probability ?? 0, JSON.stringify(stampLinesOf(read).map(({ free }) => free))).toBeGreaterThan(0.9);
  if (read.state === 'unread' || line === undefined) throw new Error('not read');
  // It lies where the stamp was laid, in the pixels in which the photo was opened.
  const scale = 6000 / read.width;
  const [x, y] = [line.quad[0].x * scale, line.quad[0].y * scale];
  expect([x > left, x < left + wide, y > top, y < top + wide]).toEqual([true, true, true, true]);
  // The same without more pixels in the file, which shows that they were needed.
  const small = await sharp(large).resize(3000).jpeg({ quality: 95 }).toBuffer();
  const without = stampLinesOf(await readInExtension(asking, 'small', small));
  expect(without.filter(({ free }) => free.text === '8509-TI' && free.probability > 0.9)).toEqual([]);
  await asking.close();
});
