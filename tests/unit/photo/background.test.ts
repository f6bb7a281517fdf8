import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { photoStockLike } from '../../../src/check/photo-stock-like';
import { decodePhoto } from '../../../src/cli/photo-file';
import { openPhoto, type PixelImage } from '../../../src/photo';
import { backgroundOf } from '../../../src/photo/background';
import { facts, readPhoto, said, withPhotos } from '../check/sample';

const side = { width: 480, height: 360 };
type Shade = (x: number, y: number) => number;

/** A brown piece in the middle of a ground. */
function pieceOn(ground: Shade): PixelImage {
  const { width, height } = side;
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const inside = Math.abs(x - width / 2) < width * 0.3 && Math.abs(y - height / 2) < height * 0.3;
      const grey = ground(x, y);
      data.set(inside ? [122, 74, 40, 255] : [grey, grey, grey, 255], (y * width + x) * 4);
    }
  return { width, height, data };
}

/** Sensor noise of about `deviation` steps, the same at every run: the sum of four even draws of a fixed generator. */
function noise(deviation: number): () => number {
  let state = 20260115;
  const draw = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  return () => (draw() + draw() + draw() + draw()) * deviation * Math.sqrt(3);
}

const asJpeg = async ({ width, height, data }: PixelImage): Promise<PixelImage> => {
  const bytes = await sharp(Buffer.from(data), { raw: { width, height, channels: 4 } })
    .jpeg({ quality: 85 })
    .toBuffer();
  const opened = await openPhoto(new Uint8Array(bytes), 'generated', decodePhoto);
  if (!opened.ok) throw new Error(opened.problem.code);
  return opened.value.image;
};
const answer = (image: PixelImage) =>
  said(
    photoStockLike,
    facts({ listing: withPhotos(1), photos: [readPhoto('p1', { background: backgroundOf(image) })] }),
  )[0];

describe('the ground around a piece', () => {
  it('is measured exactly on even ground', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 255 }), (grey) => {
        const { lightness, spread, noise } = backgroundOf(pieceOn(() => grey));
        expect(lightness).toBeCloseTo(grey, 1);
        expect([spread, noise]).toEqual([0, 0]);
      }),
    );
  });

  it('gives the mean step between neighbours of noisy ground', () => {
    const draw = noise(3);
    const measured = backgroundOf(pieceOn(() => 200 + draw()));
    expect(measured.noise).toBeGreaterThan(2.9);
    expect(measured.noise).toBeLessThan(3.9);
  });

  it('takes the darkest of the four edges', () => {
    expect(backgroundOf(pieceOn((_x, y) => (y > 330 ? 90 : 255))).lightness).toBeCloseTo(90, 0);
  });

  it('takes the smallest photo that is read', () => {
    expect(backgroundOf({ width: 24, height: 24, data: new Uint8ClampedArray(24 * 24 * 4).fill(255) })).toEqual({
      lightness: 255,
      spread: 0,
      noise: 0,
    });
  });
});

describe('what looks like a catalogue picture, from pixels', () => {
  it('is a piece cut out on white or on even light grey, saved as JPEG', async () => {
    expect(answer(await asJpeg(pieceOn(() => 255)))).toMatch(/^doubt/);
    expect(answer(await asJpeg(pieceOn(() => 242)))).toMatch(/^doubt/);
  });

  it('is not a white sheet with a fall of light, with or without noise', async () => {
    const draw = noise(2.5);
    expect(answer(await asJpeg(pieceOn((x, y) => 250 - x / 24 - y / 40)))).toBe('silent');
    expect(answer(await asJpeg(pieceOn((x) => 248 - x / 30 + draw())))).toBe('silent');
  });

  it('is not an evenly lit sheet with a sensor’s noise', async () => {
    const draw = noise(3);
    expect(answer(await asJpeg(pieceOn(() => 238 + draw())))).toBe('silent');
  });

  it('is not a piece that fills the photo', () => {
    expect(answer(pieceOn((x, y) => (y < 20 || x < 20 ? 255 : 120)))).toBe('silent');
  });
});

const photographs = ['tests/market/site/photos/', 'tests/photos/stamps/'].flatMap((folder) =>
  readdirSync(new URL(`../../../${folder}`, import.meta.url))
    .filter((name) => /\.(jpg|png|webp)$/.test(name))
    .map((name) => `${folder}${name}`),
);

it('finds no catalogue picture among the photographs of the demonstration', async () => {
  expect(photographs.length).toBeGreaterThan(50);
  const doubted: string[] = [];
  for (const name of photographs) {
    const opened = await openPhoto(
      new Uint8Array(readFileSync(new URL(`../../../${name}`, import.meta.url))),
      name,
      decodePhoto,
    );
    if (opened.ok && answer(opened.value.image) !== 'silent') doubted.push(name);
  }
  expect(doubted).toEqual([]);
}, 120_000);
