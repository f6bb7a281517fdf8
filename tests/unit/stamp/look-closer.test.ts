import { describe, expect, it } from 'vitest';
import { type GreyImage, type Quad, quadBounds } from '../../../src/photo';
import type { StampNets } from '../../../src/stamp';
import { lookCloser } from '../../../src/stamp/look-closer';

/** A photo whose only dark pixel is where a finder of the test finds a line, if it is in the picture it is shown. */
function photoWith(width: number, height: number, x: number, y: number): GreyImage {
  const data = new Float32Array(width * height).fill(255);
  data[y * width + x] = 0;
  return { width, height, data };
}

const around = (x: number, y: number): Quad => [
  { x: x - 20, y: y - 5 },
  { x: x + 20, y: y - 5 },
  { x: x + 20, y: y + 5 },
  { x: x - 20, y: y + 5 },
];

function netsThatFindDark(seen: { width: number; height: number }[]): StampNets {
  return {
    acceptance: { stampScore: 0.5 },
    margin: 0.5,
    readLine: async () => ({ steps: [] }),
    findLines: async ({ width, height, data }) => {
      seen.push({ width, height });
      const at = data.indexOf(0);
      return at < 0 ? [] : [{ quad: around(at % width, Math.floor(at / width)), stampScore: 0.9 }];
    },
  };
}

describe('a second look at a large photo', () => {
  it.each([
    [100, 100],
    [1900, 80],
    [1000, 700],
    [60, 1400],
    [1950, 1450],
  ])('finds a line at %d, %d once, in the photo’s own pixels', async (x, y) => {
    const seen: { width: number; height: number }[] = [];
    const found = await lookCloser(photoWith(2000, 1500, x, y), netsThatFindDark(seen), []);
    expect(found.map(({ quad }) => quadBounds(quad))).toEqual([quadBounds(around(x, y))]);
    expect(seen).toHaveLength(4);
    for (const { width, height } of seen) {
      expect(Math.abs(width - 1120)).toBeLessThanOrEqual(1);
      expect(Math.abs(height - 840)).toBeLessThanOrEqual(1);
    }
  });

  it('leaves out what is known, and looks at no small photo twice', async () => {
    const seen: { width: number; height: number }[] = [];
    const nets = netsThatFindDark(seen);
    expect(await lookCloser(photoWith(2000, 1500, 500, 500), nets, [{ quad: around(503, 501) }])).toEqual([]);
    seen.length = 0;
    expect(await lookCloser(photoWith(1500, 900, 500, 500), nets, [])).toEqual([]);
    expect(seen).toEqual([]);
  });
});
