import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { projectionOnto, type Quad, warpQuad } from '../../../../src/photo';
import { planeOf, spectrumOf, transform } from '../../../../src/photo/measure/fourier';
import { project } from '../../../../src/photo/warp';

const near = (middle: number) => fc.double({ min: middle - 60, max: middle + 60, noNaN: true });
const quads = fc.tuple(near(100), near(100), near(300), near(100), near(300), near(300), near(100), near(300)).map(
  ([a, b, c, d, e, f, g, h]): Quad => [
    { x: a, y: b },
    { x: c, y: d },
    { x: e, y: f },
    { x: g, y: h },
  ],
);

describe('arithmetic of measures', () => {
  it('takes a rectangle onto a quad as the eight equations of a projection say', () => {
    fc.assert(
      fc.property(quads, (quad) => {
        const corners = [
          [0, 0],
          [40, 0],
          [40, 30],
          [0, 30],
        ] as const;
        const rows = corners.flatMap(([u, v], at) => [
          [u, v, 1, 0, 0, 0, -u * quad[at]!.x, -v * quad[at]!.x, quad[at]!.x],
          [0, 0, 0, u, v, 1, -u * quad[at]!.y, -v * quad[at]!.y, quad[at]!.y],
        ]);
        const solved = solve(rows);
        projectionOnto(quad, 40, 30)!.forEach((entry, at) => {
          expect(entry).toBeCloseTo(solved[at]!, 6);
        });
        corners.forEach(([u, v], at) => {
          const { x, y } = project(projectionOnto(quad, 40, 30)!, u, v);
          expect(Math.hypot(x - quad[at]!.x, y - quad[at]!.y)).toBeLessThan(1e-6);
        });
      }),
    );
  });

  it('warps without moving anything by half a pixel: an even slope stays what it is at every size', () => {
    const slope = {
      width: 60,
      height: 50,
      data: new Float32Array(3000).map((_, at) => (at % 60) + 0.5 + 2 * (Math.floor(at / 60) + 0.5)),
    };
    const quad: Quad = [
      { x: 10, y: 8 },
      { x: 50, y: 8 },
      { x: 50, y: 40 },
      { x: 10, y: 40 },
    ];
    for (const [width, height] of [
      [40, 32],
      [80, 64],
      [20, 16],
      [33, 47],
    ] as const) {
      const { data } = warpQuad(slope, quad, width, height)!;
      data.forEach((value, at) => {
        const x = 10 + ((at % width) + 0.5) * (40 / width);
        const y = 8 + (Math.floor(at / width) + 0.5) * (32 / height);
        expect(Math.abs(value - (x + 2 * y))).toBeLessThan(0.02);
      });
    }
  });

  const numbers = (length: number) =>
    fc.array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: length, maxLength: length });
  /** One frequency of a series, as the sum that defines it. */
  const sumOf = (values: readonly number[], k: number) => {
    const angle = (2 * Math.PI * k) / values.length;
    return {
      real: values.reduce((total, value, n) => total + value * Math.cos(angle * n), 0),
      imaginary: values.reduce((total, value, n) => total - value * Math.sin(angle * n), 0),
    };
  };

  it.each([2, 4, 8, 32, 64])('transforms %i numbers as the sum that defines it, and back', (length) => {
    fc.assert(
      fc.property(numbers(length), (values) => {
        const [real, imaginary] = [Float64Array.from(values), new Float64Array(length)];
        transform(real, imaginary);
        for (let k = 0; k < length; k++) {
          const sum = sumOf(values, k);
          expect(real[k]).toBeCloseTo(sum.real, 8);
          expect(imaginary[k]).toBeCloseTo(sum.imaginary, 8);
        }
        transform(real, imaginary, true);
        values.forEach((value, at) => {
          expect(real[at]).toBeCloseTo(value, 8);
        });
      }),
      { numRuns: 30 },
    );
  });

  it.each([
    [8, 4, 4],
    [4, 16, 16],
    [16, 8, 3],
    [8, 1, 1],
  ])('transforms a plane of %i by %i numbers, of which %i rows hold any, and back', (width, height, filled) => {
    fc.assert(
      fc.property(numbers(width * filled), (values) => {
        const plane = new Float64Array(width * height);
        plane.set(values);
        const spectrum = spectrumOf(plane, width, filled);
        const half = width / 2 + 1;
        for (let row = 0; row < height; row++) {
          for (let k = 0; k < half; k++) {
            let [real, imaginary] = [0, 0];
            plane.forEach((value, at) => {
              const angle = -2 * Math.PI * (((at % width) * k) / width + (Math.floor(at / width) * row) / height);
              real += value * Math.cos(angle);
              imaginary += value * Math.sin(angle);
            });
            expect(spectrum.real[row * half + k]).toBeCloseTo(real, 8);
            expect(spectrum.imaginary[row * half + k]).toBeCloseTo(imaginary, 8);
          }
        }
        planeOf(spectrum).forEach((value, at) => {
          expect(value).toBeCloseTo(plane[at]!, 8);
        });
      }),
      { numRuns: 20 },
    );
  });
});

/** Gauss with the largest pivot, for the reference. */
function solve(rows: number[][]): number[] {
  const size = rows.length;
  for (let i = 0; i < size; i++) {
    const pivot = rows
      .slice(i)
      .reduce((best, row, at) => (Math.abs(row[i]!) > Math.abs(rows[best]![i]!) ? i + at : best), i);
    [rows[i], rows[pivot]] = [rows[pivot]!, rows[i]!];
    for (let j = 0; j < size; j++) {
      if (j === i) continue;
      const share = rows[j]![i]! / rows[i]![i]!;
      for (let k = i; k <= size; k++) rows[j]![k]! -= share * rows[i]![k]!;
    }
  }
  return rows.map((row, i) => row[size]! / row[i]!);
}
