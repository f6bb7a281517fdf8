import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type OpenEngines, openEngines } from '../../../src/cli/engines';
import { decodePhoto } from '../../../src/cli/photo-file';
import { openPhoto, type PixelImage, quadBounds } from '../../../src/photo';
import { readStamp, type StampEngines, type StampReading } from '../../../src/stamp';

const leather = (width: number, height: number): PixelImage => {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let at = 0; at < width * height; at++) data.set([150 + (at % 7), 110, 70, 255], at * 4);
  return { width, height, data };
};

describe('reading one photo, whatever the engines do', () => {
  it('leaves a photo unread that is too small to hold a line', async () => {
    const read = await readStamp(leather(1, 1), 'p1', { print: { read: async () => [] } });
    expect(read).toMatchObject({ state: 'unread', photoId: 'p1', problem: { code: 'photo-too-small' } });
  });

  it('leaves a photo unread, never empty, when no engine could start', async () => {
    const read = await readStamp(leather(640, 480), 'p1', { print: null });
    expect(read).toMatchObject({ state: 'unread', problem: { code: 'no-stamp-engine' } });
  });

  it('leaves a photo unread, never empty, when the engine fails', async () => {
    const engines: StampEngines = {
      print: null,
      net: {
        acceptance: { stampScore: 0.5 },
        margin: 0,
        findLines: () => Promise.reject(new Error('out of memory')),
        readLine: async () => ({ steps: [] }),
      },
    };
    const read = await readStamp(leather(640, 480), 'p1', engines);
    expect(read).toMatchObject({
      state: 'unread',
      problem: { code: 'stamp-engine-failed', data: { said: 'out of memory' } },
    });
  });

  it('reads the lines that the nets find, in pixels of the photo given, and measures them', async () => {
    const steps: Record<string, number>[] = [
      { K: 1 },
      { '': 1 },
      { V: 0.9, Y: 0.1 },
      { '': 1 },
      { '0': 0.8, '8': 0.2 },
    ];
    const engines: StampEngines = {
      print: null,
      net: {
        acceptance: { stampScore: 0.5 },
        margin: 0,
        findLines: async (photo) => [
          {
            quad: [
              { x: photo.width * 0.25, y: 100 },
              { x: photo.width * 0.75, y: 100 },
              { x: photo.width * 0.75, y: 160 },
              { x: photo.width * 0.25, y: 160 },
            ],
            stampScore: 0.97,
          },
        ],
        readLine: async () => ({ steps }),
      },
    };
    const read = await readStamp(leather(4000, 600), 'p1', engines);
    const [line] = read.state === 'read' ? read.lines : [];
    expect(line).toMatchObject({ engine: 'net', stampScore: 0.97, free: { text: 'KV0' } });
    expect(line?.free.probability).toBeCloseTo(0.72, 6);
    const bounds = quadBounds(line!.quad);
    expect(bounds.x0).toBeCloseTo(1000, 0);
    expect(bounds.x1).toBeCloseTo(3000, 0);
    expect(line?.measurements.map(({ what }) => what)).toContain('pitch');
  });
});

describe('reading the demo photographs without nets', () => {
  let open: OpenEngines;
  beforeAll(async () => {
    open = await openEngines();
  }, 60_000);
  afterAll(() => open.close());

  const seen = new Map<string, StampReading>();
  const readDemo = async (name: string): Promise<StampReading> => {
    const file = new URL(`../../market/site/photos/${name}`, import.meta.url).pathname;
    const photo = await openPhoto(new Uint8Array(await sharp(file).toBuffer()), name, decodePhoto);
    if (!photo.ok) throw new Error(photo.problem.code);
    const { print } = open.engines;
    return readStamp(photo.value.image, name, { print });
  };

  it.each([
    ['l2-stamp.jpg', 'KV0978', [320, 350, 790, 480]],
    ['l7-stamp.jpg', '834', [390, 330, 700, 480]],
  ] as const)(
    '%s spells %s where it stands',
    async (name, code, [x0, y0, x1, y1]) => {
      const read = await readDemo(name);
      seen.set(name, read);
      const [line] = read.state === 'read' ? read.lines : [];
      expect(line?.free.text).toBe(code);
      const bounds = quadBounds(line!.quad);
      expect(bounds.x0).toBeGreaterThan(x0 - 40);
      expect(bounds.y0).toBeGreaterThan(y0 - 40);
      expect(bounds.x1).toBeLessThan(x1 + 40);
      expect(bounds.y1).toBeLessThan(y1 + 40);
    },
    60_000,
  );

  it('reads a photo the same again after others: nothing is carried over', async () => {
    expect(await readDemo('l2-stamp.jpg')).toEqual(seen.get('l2-stamp.jpg'));
  }, 60_000);
});
