import { readdirSync } from 'node:fs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { decodePhoto } from '../../../../src/cli/photo-file';
import { openPhoto, type PixelImage } from '../../../../src/photo';
import { margin } from '../../../../src/photo/observe/margin';
import { readingCopy } from '../../../../src/photo/reading-copy';

type Sides = readonly [left: number, top: number, right: number, bottom: number];

/** Park and Miller's generator (Communications of the ACM 31, 1988): the same photos in every run. */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Uneven ground, as any camera sees it, with an even margin of one colour laid around it. */
function bordered(
  width: number,
  height: number,
  [left, top, right, bottom]: Sides,
  colour: number,
  seed = 7,
): PixelImage {
  const random = numbersFrom(seed);
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const isInside = x >= left && x < width - right && y >= top && y < height - bottom;
      const shade = 110 + 50 * Math.sin(x / 37) + 30 * Math.cos(y / 23) + 20 * random();
      data.fill(isInside ? shade : colour, (y * width + x) * 4, (y * width + x) * 4 + 3);
    }
  return { width, height, data };
}

const measured = (image: PixelImage) => {
  const [seen] = margin.measure(image, { photoId: 'p1', grey: readingCopy(image).grey, printed: [] });
  return seen ?? null;
};
const cornersOf = (image: PixelImage) => {
  const [first, , third] = measured(image)?.where?.points ?? [];
  return first && third ? [first.x, first.y, third.x, third.y] : null;
};

async function asJpeg(image: PixelImage, quality: number): Promise<PixelImage> {
  const raw = { width: image.width, height: image.height, channels: 4 as const };
  const bytes = await sharp(Buffer.from(image.data), { raw }).jpeg({ quality }).toBuffer();
  return open(new Uint8Array(bytes));
}
async function open(bytes: Uint8Array<ArrayBuffer>): Promise<PixelImage> {
  const opened = await openPhoto(bytes, 'drawn', decodePhoto);
  if (!opened.ok) throw new Error(opened.problem.code);
  return opened.value.image;
}

describe('the even margin around a picture', () => {
  it.each([
    ['a frame', [40, 30, 20, 50], 255],
    ['bars above and below', [0, 60, 0, 60], 0],
    ['bars left and right', [80, 0, 80, 0], 128],
    ['one bar', [0, 0, 0, 25], 240],
  ] as const)('is measured exactly: %s', (_name, sides, colour) => {
    const image = bordered(400, 300, sides, colour);
    const [left, top, right, bottom] = sides;
    expect(cornersOf(image)).toEqual([left, top, 400 - right, 300 - bottom]);
    const outside = 1 - ((400 - left - right) * (300 - top - bottom)) / (400 * 300);
    expect(measured(image)).toMatchObject({ id: 'p1-margin', value: outside, unit: 'share', by: 'machine' });
  });

  it('is told in pixels of the photo, however large it is', () => {
    const corners = cornersOf(bordered(4500, 200, [450, 0, 900, 0], 255)) ?? [];
    for (const [at, side] of [450, 0, 3600, 200].entries()) expect(Math.abs(corners[at]! - side)).toBeLessThan(4);
  });

  it('counts from a hundredth of the side on', () => {
    expect(measured(bordered(400, 300, [0, 2, 0, 0], 255))).toBeNull();
    expect(cornersOf(bordered(400, 300, [0, 3, 0, 0], 255))).toEqual([0, 3, 400, 300]);
  });

  it('is none where all is one colour, or hardly anything lies inside', () => {
    expect(measured(bordered(400, 300, [200, 150, 200, 150], 255))).toBeNull();
    expect(measured(bordered(400, 300, [185, 0, 185, 0], 255))).toBeNull();
  });

  it('lies within its uncertainty in 95 of 100 photos after JPEG', { timeout: 60_000 }, async () => {
    const random = numbersFrom(99);
    const upTo = (most: number) => Math.floor(random() * most);
    let held = 0;
    for (let photo = 0; photo < 60; photo++) {
      const [width, height] = [300 + upTo(300), 200 + upTo(200)];
      const sides = [8 + upTo(60), 8 + upTo(50), 8 + upTo(60), 8 + upTo(50)] as const;
      const image = await asJpeg(bordered(width, height, sides, [0, 90, 255][photo % 3]!, photo + 1), 60 + upTo(36));
      const outside = 1 - ((width - sides[0] - sides[2]) * (height - sides[1] - sides[3])) / (width * height);
      const seen = measured(image);
      if (seen && Math.abs(Number(seen.value) - outside) <= (seen.uncertainty ?? 0)) held++;
    }
    expect(held).toBeGreaterThanOrEqual(57);
  });

  it('is seen on no photograph of the demonstration, which have none', { timeout: 60_000 }, async () => {
    const folder = new URL('../../../market/site/photos/', import.meta.url);
    const files = readdirSync(folder).filter((file) => file.endsWith('.jpg'));
    expect(files.length).toBeGreaterThan(20);
    const withMargin: string[] = [];
    for (const file of files) {
      const bytes = new Uint8Array(await sharp(new URL(file, folder).pathname).toBuffer());
      if (measured(await open(bytes)) !== null) withMargin.push(file);
    }
    expect(withMargin).toEqual([]);
  });
});
