import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GreyImage, PixelImage, Quad } from '../../../src/photo';
import {
  boxDeviation,
  boxMean,
  flatten,
  greyOf,
  pixelsOf,
  project,
  projectionOnto,
  resizeGrey,
  resizePixels,
  sizeWithin,
  stretch,
  turnedQuad,
  warpQuad,
} from '../../../src/photo';
import { differenceHash, hashDistance } from '../../../src/photo/hash';
import { isTooWeak, sharpness } from '../../../src/photo/sharpness';

const drawn = (width: number, height: number, value: (x: number, y: number) => number): GreyImage => ({
  width,
  height,
  data: Float32Array.from({ length: width * height }, (_, at) => value(at % width, Math.floor(at / width))),
});

describe('brightness', () => {
  it('weighs colours as the eye does and lays transparency on white', () => {
    const image: PixelImage = {
      width: 4,
      height: 1,
      data: new Uint8ClampedArray([255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255, 0, 0, 0, 0]),
    };
    expect([...greyOf(image).data].map(Math.round)).toEqual([76, 150, 29, 255]);
  });

  it('comes back unchanged from colour pixels', () => {
    const image = drawn(5, 3, (x, y) => x * 20 + y * 7);
    expect([...greyOf(pixelsOf(image)).data].map(Math.round)).toEqual([...image.data]);
  });
});

describe('resizing', () => {
  it('keeps the mean and even ground, shrinking and growing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), (width, height) => {
        const even = resizeGrey(
          drawn(17, 11, () => 93),
          width,
          height,
        );
        expect(even.data.length).toBe(width * height);
        for (const value of even.data) expect(value).toBeCloseTo(93, 3);
      }),
    );
  });

  it('averages what a pixel covers, so that fine lines fade and do not vanish', () => {
    const lines = resizeGrey(
      drawn(64, 64, (x) => (x % 2 === 0 ? 0 : 200)),
      8,
      8,
    );
    for (const value of lines.data) expect(Math.abs(value - 100)).toBeLessThan(8);
  });

  it('resizes colours channel by channel', () => {
    const image: PixelImage = { width: 2, height: 1, data: new Uint8ClampedArray([10, 20, 30, 255, 10, 20, 30, 255]) };
    expect([...resizePixels(image, 1, 1).data]).toEqual([10, 20, 30, 255]);
  });

  it('fits a size inside a side, and never enlarges', () => {
    expect(sizeWithin(4000, 3000, 1000)).toEqual({ width: 1000, height: 750 });
    expect(sizeWithin(300, 200, 1000)).toEqual({ width: 300, height: 200 });
    expect(sizeWithin(20_000, 2, 1000)).toEqual({ width: 1000, height: 1 });
  });
});

describe('turning a quad upright', () => {
  const corners = fc.tuple(
    fc.record({ x: fc.double({ min: 0, max: 40, noNaN: true }), y: fc.double({ min: 0, max: 30, noNaN: true }) }),
    fc.record({ x: fc.double({ min: 160, max: 200, noNaN: true }), y: fc.double({ min: 0, max: 30, noNaN: true }) }),
    fc.record({ x: fc.double({ min: 160, max: 200, noNaN: true }), y: fc.double({ min: 90, max: 120, noNaN: true }) }),
    fc.record({ x: fc.double({ min: 0, max: 40, noNaN: true }), y: fc.double({ min: 90, max: 120, noNaN: true }) }),
  );

  it('takes the rectangle to the quad, corner by corner', () => {
    fc.assert(
      fc.property(corners, (quad) => {
        const projection = projectionOnto(quad, 60, 20);
        expect(projection).not.toBeNull();
        const places = [
          [0, 0],
          [60, 0],
          [60, 20],
          [0, 20],
        ] as const;
        places.forEach(([x, y], corner) => {
          const point = project(projection!, x, y);
          expect(point.x).toBeCloseTo(quad[corner]!.x, 5);
          expect(point.y).toBeCloseTo(quad[corner]!.y, 5);
        });
      }),
    );
  });

  it('reads a turned ramp as a straight one', () => {
    const degrees = 23;
    const [sine, cosine] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
    const image = drawn(120, 120, (x, y) => 100 + (x + 0.5 - 60) * cosine + (y + 0.5 - 60) * sine);
    const upright = warpQuad(image, turnedQuad({ x: 60, y: 60 }, 60, 20, degrees), 60, 20)!;
    for (let column = 0; column < 60; column++) {
      expect(upright.data[10 * 60 + column]).toBeCloseTo(100 + column + 0.5 - 30, 1);
    }
  });

  it('has no answer for a flat quad', () => {
    const flat: Quad = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 20, y: 0 },
      { x: 5, y: 0 },
    ];
    expect(
      warpQuad(
        drawn(9, 9, () => 0),
        flat,
        10,
        10,
      ),
    ).toBeNull();
  });
});

describe('contrast', () => {
  it('means and deviations of a square are those counted by hand, also at the edge', () => {
    const image = drawn(9, 7, (x, y) => (x * 31 + y * 17) % 23);
    for (const [x, y] of [
      [4, 3],
      [0, 0],
      [8, 6],
    ] as const) {
      const seen: number[] = [];
      for (let row = Math.max(0, y - 2); row <= Math.min(6, y + 2); row++) {
        for (let column = Math.max(0, x - 2); column <= Math.min(8, x + 2); column++)
          seen.push(image.data[row * 9 + column]!);
      }
      const mean = seen.reduce((sum, value) => sum + value, 0) / seen.length;
      const deviation = Math.sqrt(seen.reduce((sum, value) => sum + (value - mean) ** 2, 0) / seen.length);
      expect(boxMean(image, 2).data[y * 9 + x]).toBeCloseTo(mean, 3);
      expect(boxDeviation(image, 2).data[y * 9 + x]).toBeCloseTo(deviation, 2);
    }
  });

  it('flattening takes a shadow out and leaves strokes equally strong on both sides of it', () => {
    const shaded = drawn(200, 60, (x) => (x < 100 ? 60 : 200) + (x % 20 < 4 ? -25 : 0));
    const flat = flatten(shaded, 12);
    const strokeAt = (x: number): number => flat.data[30 * 200 + x]!;
    expect(Math.abs(strokeAt(41) - strokeAt(161))).toBeLessThan(3);
    expect(Math.abs(strokeAt(50) - strokeAt(170))).toBeLessThan(3);
  });

  it('stretches between quantiles and parts two groups between them', () => {
    const image = drawn(100, 10, (x) => (x < 50 ? 90 : 140));
    const wide = stretch(image);
    expect([wide.data[0], wide.data[99]]).toEqual([0, 255]);
  });
});

describe('the same photo seen again', () => {
  const scene = (x: number, y: number): number =>
    120 + 70 * Math.sin(x / 37) * Math.cos(y / 23) + 30 * Math.sin((x + y) / 90);

  it('has all bits set where it brightens to the right, none where it darkens', () => {
    expect(differenceHash(drawn(90, 80, (x) => x * 2))).toBe('ffffffffffffffff');
    expect(differenceHash(drawn(90, 80, (x) => 255 - x * 2))).toBe('0000000000000000');
    expect(differenceHash(drawn(90, 80, (x) => (x < 45 ? x * 4 : 360 - x * 4)))).toBe('f0f0f0f0f0f0f0f0');
  });

  it('hashes alike when shrunk and lightened, and unlike when another', () => {
    const photo = drawn(400, 300, scene);
    const small = resizeGrey(photo, 160, 120);
    const lighter = { ...small, data: small.data.map((value) => value * 0.8 + 40) };
    const other = drawn(400, 300, (x, y) => scene(y * 1.7, x * 0.6));
    expect(hashDistance(differenceHash(photo), differenceHash(lighter))).toBeLessThanOrEqual(3);
    expect(hashDistance(differenceHash(photo), differenceHash(other))).toBeGreaterThan(12);
  });

  it('counts differing bits', () => {
    expect(hashDistance('0000000000000000', 'ffffffffffffffff')).toBe(64);
    expect(hashDistance('00000000000000f1', '00000000000000f0')).toBe(1);
  });
});

describe('sharpness', () => {
  const text = (x: number, y: number): number => ((Math.floor(x / 5) + Math.floor(y / 7)) % 3 === 0 ? 60 : 180);

  it('falls with blur', () => {
    const sharp = drawn(640, 480, text);
    const blurred = boxMean(boxMean(sharp, 4), 4);
    expect(sharpness(sharp)).toBeGreaterThan(5 * sharpness(blurred));
  });

  it('calls a photo too weak that is small, blurred or black, and a sharp one strong enough', () => {
    expect(isTooWeak(drawn(640, 480, text))).toBe(false);
    expect(isTooWeak(boxMean(boxMean(drawn(640, 480, text), 14), 14))).toBe(true);
    expect(isTooWeak(drawn(640, 480, () => 0))).toBe(true);
    expect(isTooWeak(drawn(200, 150, text))).toBe(true);
  });
});
