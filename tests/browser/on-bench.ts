import type { Page } from 'playwright-core';
import sharp from 'sharp';
import type { PixelImage, Point } from '../../src/photo/types';
import { type LetteringScene, letteringScene } from '../measure/lettering-truth';
import { openListing, type Stage, variant } from './panel-states';

/** Pixels as the file of a photo. */
export const jpegOf = ({ data, width, height }: PixelImage): Promise<Buffer> =>
  sharp(Buffer.from(data.buffer), { raw: { width, height, channels: 4 } })
    .removeAlpha()
    .jpeg({ quality: 92 })
    .toBuffer();

type Size = Pick<PixelImage, 'width' | 'height'>;

/** Brings a handle to a place of the photo, in its pixels, by arrow keys alone: ten pixels with Shift, then one by one. */
export async function bring(page: Page, name: RegExp, to: Point, photo: Size): Promise<void> {
  const handle = page.locator('.bench-stage').getByRole('slider', { name }).first();
  await handle.focus();
  for (const [back, on, side, length] of [
    ['ArrowLeft', 'ArrowRight', 'x', photo.width],
    ['ArrowUp', 'ArrowDown', 'y', photo.height],
  ] as const) {
    const told = await handle.getAttribute('aria-valuetext');
    const shares = /([\d.]+)% from the left, ([\d.]+)% from the top/.exec(told ?? '')!;
    const now = (Number(shares[side === 'x' ? 1 : 2]) / 100) * length;
    const way = to[side] < now ? back : on;
    const far = Math.round(Math.abs(to[side] - now));
    for (let tens = 0; tens < Math.floor(far / 10); tens++) await page.keyboard.press(`Shift+${way}`);
    for (let ones = 0; ones < far % 10; ones++) await page.keyboard.press(way);
  }
}

/** A measure that was told at a mark. */
export const measure = (page: Page, mark: number, what: string) =>
  page.locator(`.mark-sheet[data-mark="${mark}"] > .measures > [data-what="${what}"][data-value="told"] dd`);

/** Leather of which the left half was covered and the right half lay open to light and hands. */
const open: PixelImage = { width: 720, height: 420, data: new Uint8ClampedArray(720 * 420 * 4) };
for (let at = 0; at < 720 * 420; at++) {
  const grain = ((at * 7919) % 13) - 6;
  const colour = at % 720 < 360 ? [205, 165, 120] : [150, 105, 65];
  open.data.set([...colour.map((part) => part + grain), 255], at * 4);
}
const text = 'LEATHER';

/** The bench of a photo of a listing, in its panel; the listing calls its piece new. Its other photo is `leather`. */
async function openBench(stage: Stage, name: string, photos: Record<string, Buffer>, photo: number): Promise<Page> {
  const [first, second] = Object.keys(photos);
  for (const [file, body] of Object.entries(photos)) stage.market.make(file, { type: 'image/jpeg', body });
  const changes: [string, string][] = [
    ['photos/l2-front.jpg', first!],
    ['photos/l2-stamp.jpg', second!],
    ['one owner from new', 'brand new, never used'],
  ];
  const body = await variant('ondrasse-carryall-25-1987.html', changes, [1, 5]);
  stage.market.make(name, { type: 'text/html; charset=utf-8', body });
  const { panel } = await openListing(stage, stage.at('attic-arcade.example', name));
  await panel.getByText('Photos', { exact: true }).click();
  await panel.getByRole('button', { name: `Look at photo ${photo} by hand` }).click();
  await panel.getByRole('button', { name: 'Measure on this photo' }).click();
  return panel;
}

const corners = ['top left', 'top right', 'bottom right', 'bottom left'];

/** Lays a line of characters by keyboard alone, types it, and waits for its measures. */
async function layLine(page: Page, scene: LetteringScene): Promise<void> {
  await page.getByRole('button', { name: 'Line of characters' }).press('Enter');
  await page.locator('.bench-stage .handle:focus').waitFor();
  for (const [at, corner] of corners.entries())
    await bring(page, new RegExp(`1 Line of characters.*${corner}`), scene.corners[at]!, scene.image);
  const field = page.getByLabel('Its characters, as they stand there');
  await field.focus();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
  await measure(page, 1, 'letters').waitFor({ timeout: 60_000 });
}

/** A measured line beside those of so many kept listings of the same maker. */
export async function openLetters(stage: Stage, others: number): Promise<Page> {
  for (let at = 0; ; at++) {
    const scene = await letteringScene(40 + at, 'clear', text);
    const photos = { [`line-${at}.jpg`]: await jpegOf(scene.image), [`leather-${at}.jpg`]: await jpegOf(open) };
    const panel = await openBench(stage, `line-${at}.html`, photos, 1);
    await layLine(panel, scene);
    if (at === others) return panel;
    await panel.getByRole('button', { name: 'Keep', exact: true }).click();
    await panel.getByText('Kept.').waitFor();
    await panel.close();
  }
}

/** Leather that lay open, held against leather that was covered, both laid by keyboard alone. */
export async function openAged(stage: Stage): Promise<Page> {
  const scene = await letteringScene(39, 'clear', text);
  const photos = { 'line-of-aged.jpg': await jpegOf(scene.image), 'aged.jpg': await jpegOf(open) };
  const panel = await openBench(stage, 'aged.html', photos, 2);
  for (const [name, x] of [
    ['Colour', 170],
    ['Leather that lay open', 540],
  ] as const) {
    await panel.getByRole('button', { name, exact: true }).press('Enter');
    await panel.locator('.bench-stage .handle:focus').waitFor();
    await bring(panel, new RegExp(`\\d ${name}.*all of it`), { x, y: 210 }, open);
  }
  await measure(panel, 2, 'darkening').waitFor({ timeout: 60_000 });
  return panel;
}
