import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type OpenEngines, openEngines } from '../../../src/cli/engines';
import { cutPhoto, decodePhoto } from '../../../src/cli/photo-file';
import { type GreyImage, openPhoto, type PixelImage, type Quad, quadBounds, readPixels } from '../../../src/photo';
import { readStamp, type StampNets } from '../../../src/stamp';
import { type FullSize, looksAtFullSize } from '../../../src/stamp/look-full-size';

const root = fileURLToPath(new URL('../../', import.meta.url));

const line = (x: number, y: number, height: number): Quad => [
  { x, y },
  { x: x + 5 * height, y },
  { x: x + 5 * height, y: y + height },
  { x, y: y + height },
];

describe('places of a large photo', () => {
  const photo: GreyImage = { width: 3000, height: 2250, data: new Float32Array(1) };
  /** A file three times as large, whose parts are as bright as they are wide; what is cut is noted. */
  function full(cuts: number[][], factor = 3): FullSize {
    return {
      factor,
      cut: async (parts) =>
        parts.map(({ x0, y0, x1, y1 }): PixelImage => {
          cuts.push([x0, y0, x1, y1]);
          const [width, height] = [(x1 - x0) * factor, (y1 - y0) * factor];
          return { width, height, data: new Uint8ClampedArray(width * height * 4).fill(255) };
        }),
    };
  }
  const nets: StampNets = {
    acceptance: { stampScore: 0.5 },
    margin: 1,
    readLine: async () => ({ steps: [] }),
    findLines: async () => [{ quad: line(120, 120, 30), stampScore: 0.8 }],
  };

  it('are cut with room around them, inside the photo, and what is found there lies in the photo’s own pixels', async () => {
    const cuts: number[][] = [];
    const looks = looksAtFullSize([{ quad: line(20, 1000, 10), stampScore: 0.4 }], photo, nets, full(cuts));
    const [part] = await Promise.all(looks.map((look) => look()));
    expect(cuts).toEqual([[0, 960, 110, 1050]]);
    expect(part?.grey.width).toBe(330);
    // 120 pixels into the part are 40 of those that are read.
    expect(quadBounds(part?.found[0]?.quad.map(part.back) as Quad)).toEqual({ x0: 40, y0: 1000, x1: 90, y1: 1010 });
  });

  it('are the likeliest three, each once, and none whose characters are tall enough as they are', async () => {
    const cuts: number[][] = [];
    const places = [
      { quad: line(100, 100, 10), stampScore: 0.2 },
      { quad: line(500, 100, 10), stampScore: 0.9 },
      { quad: line(503, 101, 10), stampScore: 0.8 },
      { quad: line(900, 100, 10), stampScore: 0.5 },
      { quad: line(1300, 100, 10), stampScore: 0.7 },
      { quad: line(1300, 900, 60), stampScore: 0.95 },
    ];
    const looks = looksAtFullSize(places, photo, nets, full(cuts));
    for (const look of looks) await look();
    expect(cuts.map(([x0]) => x0)).toEqual([460, 1260, 860]);
  });

  it('that are too large to be a small line take no place of those that are looked at', async () => {
    const cuts: number[][] = [];
    const wide = (x: number, y: number): Quad => [
      { x, y },
      { x: x + 900, y },
      { x: x + 900, y: y + 49 },
      { x, y: y + 49 },
    ];
    const places = [0.9, 0.8, 0.7].map((stampScore, at) => ({ quad: wide(500, 500 + 500 * at), stampScore }));
    const small = { quad: line(100, 100, 10), stampScore: 0.4 };
    for (const look of looksAtFullSize([...places, small], photo, nets, full(cuts))) await look();
    expect(cuts).toEqual([[60, 60, 190, 150]]);
  });

  it('are left alone where the file has hardly more pixels, or no more can be had', async () => {
    const places = [{ quad: line(100, 100, 10), stampScore: 0.9 }];
    expect(looksAtFullSize(places, photo, nets, null)).toEqual([]);
    expect(looksAtFullSize(places, photo, nets, full([], 1.2))).toEqual([]);
    const [none] = looksAtFullSize(places, photo, nets, { factor: 3, cut: async (parts) => parts.map(() => null) });
    expect(await none?.()).toBeNull();
  });
});

describe('a photo of 48 million pixels', { timeout: 300_000 }, () => {
  let open: OpenEngines;
  let bytes: Uint8Array<ArrayBuffer>;
  beforeAll(async () => {
    open = await openEngines();
    // A clear stamp of the committed photographs, its characters 28 pixels tall, on leather fifty times as wide.
    const stamp = await sharp(join(root, 'photos/stamps/clear-02.jpg')).resize(990).toBuffer();
    const ground = sharp(readFileSync(join(root, 'market/site/photos/l1-front.jpg'))).resize(8000, 6000, {
      fit: 'cover',
    });
    const laid = await ground
      .blur(2)
      .composite([{ input: stamp, left: 5200, top: 3900 }])
      .jpeg({ quality: 88 })
      .toBuffer();
    bytes = new Uint8Array(laid);
  }, 300_000);
  afterAll(() => open?.close());

  it('is read where its small stamp stands, in the file’s own pixels, and in no more of them', async () => {
    const cuts: number[] = [];
    const opened = await openPhoto(bytes, 'big', decodePhoto, readPixels, async (file, header, parts) => {
      const cut = await cutPhoto(file, header, parts);
      cuts.push(...cut.map((part) => (part?.width ?? 0) * (part?.height ?? 0)));
      return cut;
    });
    if (!opened.ok) throw new Error(opened.problem.code);
    const { image, scale } = opened.value;
    const read = await readStamp(image, 'p1', open.engines, undefined, opened.value);
    if (read.state === 'unread') throw new Error('not read');
    const [code] = read.lines.filter(({ free }) => free.text === '8509-TI');
    expect(code?.free.probability).toBeGreaterThan(0.9);
    const { x0, y0, x1, y1 } = quadBounds(code?.quad as Quad);
    // Where it was laid: x from 5200 to 6190, y from 3900 to 4890.
    expect([x0 * scale > 5200, y0 * scale > 3900, x1 * scale < 6190, y1 * scale < 4890]).toEqual(Array(4).fill(true));
    expect(Math.max(...cuts)).toBeLessThanOrEqual(4_200_000);
    expect(cuts.length).toBeLessThanOrEqual(3);
  });
});
