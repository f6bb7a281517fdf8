import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { planeOf, spectrumOf } from '../../src/photo/measure/fourier';
import type { GreyImage, Quad } from '../../src/photo/types';
import { project, projectionOnto, warpQuad } from '../../src/photo/warp';
import { cv, startOpenCv } from '../opencv';

beforeAll(startOpenCv, 120_000);

const near = (middle: number) => fc.double({ min: middle - 40, max: middle + 40, noNaN: true });
const quads = fc.tuple(near(60), near(60), near(260), near(60), near(260), near(260), near(60), near(260)).map(
  ([a, b, c, d, e, f, g, h]): Quad => [
    { x: a, y: b },
    { x: c, y: d },
    { x: e, y: f },
    { x: g, y: h },
  ],
);
const pointsOf = (values: number[]) => {
  const mat = new cv.Mat(4, 1, cv.CV_32FC2);
  mat.data32F.set(values);
  return mat;
};

describe('a projection (OpenCV getPerspectiveTransform)', () => {
  it('takes points to where OpenCV’s takes them, to a hundredth of a pixel', () => {
    fc.assert(
      fc.property(
        quads,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (quad, u, v) => {
          const [width, height] = [190, 140];
          const from = pointsOf([0, 0, width, 0, width, height, 0, height]);
          const to = pointsOf(quad.flatMap(({ x, y }) => [x, y]));
          const matrix = cv.getPerspectiveTransform(from, to);
          const [a, b, c, d, e, f, g, h, i] = matrix.data64F as unknown as [
            number,
            number,
            number,
            number,
            number,
            number,
            number,
            number,
            number,
          ];
          for (const one of [from, to, matrix]) one.delete();
          const [x, y] = [u * width, v * height];
          const ours = project(projectionOnto(quad, width, height)!, x, y);
          const scale = g * x + h * y + i;
          expect(Math.hypot(ours.x - (a * x + b * y + c) / scale, ours.y - (d * x + e * y + f) / scale)).toBeLessThan(
            0.01,
          );
        },
      ),
      { numRuns: 500 },
    );
  });
});

/** Waves of several lengths: nothing finer than what a photo shows sharp. */
function waves(seed: number, width = 320, height = 320): GreyImage {
  const data = new Float32Array(width * height);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const at = (length: number, turn: number) =>
        Math.sin((2 * Math.PI * (column * Math.cos(turn + seed) + row * Math.sin(turn + seed))) / length + seed);
      data[row * width + column] = 128 + 50 * at(41, 0.3) + 40 * at(17, 1.7) + 20 * at(9, 2.9);
    }
  }
  return { width, height, data };
}

/** How much neighbours of a row and of a column differ at most, together. */
function steepest({ data, width }: GreyImage): number {
  let [across, down] = [0, 0];
  data.forEach((value, at) => {
    if (at % width > 0) across = Math.max(across, Math.abs(value - data[at - 1]!));
    if (at >= width) down = Math.max(down, Math.abs(value - data[at - width]!));
  });
  return across + down;
}

describe('a warp (OpenCV warpPerspective, between the nearest four pixels)', () => {
  it('gives the values of OpenCV’s, which takes a point to the nearest 1/32 of a pixel', () => {
    fc.assert(
      fc.property(quads, fc.double({ min: 0, max: 6, noNaN: true }), (quad, seed) => {
        const image = waves(seed);
        // No side of a quad is half as long again as this: one point a pixel, as OpenCV takes.
        const [width, height] = [200, 200];
        const ours = warpQuad(image, quad, width, height)!;
        // OpenCV counts from the middle of a pixel, and this program from its corner.
        const [a, b, c, d, e, f, g, h] = projectionOnto(quad, width, height)!;
        const moved = [
          a - 0.5 * g,
          b - 0.5 * h,
          (a + b) / 2 + c - 0.5 * ((g + h) / 2 + 1),
          d - 0.5 * g,
          e - 0.5 * h,
          (d + e) / 2 + f - 0.5 * ((g + h) / 2 + 1),
          g,
          h,
          (g + h) / 2 + 1,
        ];
        const source = new cv.Mat(image.height, image.width, cv.CV_32F);
        source.data32F.set(image.data);
        const matrix = new cv.Mat(3, 3, cv.CV_64F);
        matrix.data64F.set(moved);
        const theirs = new cv.Mat();
        const flags = cv.INTER_LINEAR | cv.WARP_INVERSE_MAP;
        cv.warpPerspective(
          source,
          theirs,
          matrix,
          new cv.Size(width, height),
          flags,
          cv.BORDER_REPLICATE,
          new cv.Scalar(),
        );
        const apart = Array.from(ours.data, (value, at) => Math.abs(value - theirs.data32F[at]!));
        for (const one of [source, matrix, theirs]) one.delete();
        expect(Math.max(...apart)).toBeLessThan(steepest(image) / 64 + 0.01);
      }),
      { numRuns: 40 },
    );
  });
});

describe('likeness to itself moved (OpenCV dft)', () => {
  it('is what OpenCV’s transform, its power and the way back give, to a millionth of the greatest', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6, noNaN: true }), fc.constantFrom(32, 64, 128), (seed, side) => {
        const { data } = waves(seed, side, side);
        const real = Float64Array.from(data, (value) => value - 128);
        const plain = new cv.Mat(side, side, cv.CV_64F);
        plain.data64F.set(real);
        const half = spectrumOf(real, side);
        for (let at = 0; at < half.real.length; at++) half.real[at] = half.real[at]! ** 2 + half.imaginary[at]! ** 2;
        half.imaginary.fill(0);
        const own = planeOf(half);

        const [spectrum, back] = [new cv.Mat(), new cv.Mat()];
        cv.dft(plain, spectrum, cv.DFT_COMPLEX_OUTPUT, 0);
        const power = new cv.Mat(side, side, cv.CV_64FC2);
        power.data64F.set(
          spectrum.data64F.map((part, at) => (at % 2 === 0 ? part ** 2 + spectrum.data64F[at + 1]! ** 2 : 0)),
        );
        cv.dft(power, back, cv.DFT_INVERSE | cv.DFT_SCALE | cv.DFT_REAL_OUTPUT, 0);
        const most = Math.abs(own[0]!);
        const apart = Array.from(own, (value, at) => Math.abs(value - back.data64F[at]!) / most);
        for (const one of [plain, spectrum, power, back]) one.delete();
        expect(Math.max(...apart)).toBeLessThan(1e-6);
      }),
      { numRuns: 30 },
    );
  });
});
