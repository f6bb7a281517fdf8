/**
 * Discrete Fourier transforms whose lengths are powers of two. Forward: e^(-2πi kn/N), nothing divided; back divides by N.
 * Radix 4, sorting itself, so that no bits are turned. Source: D. H. Bailey, "FFTs in external or hierarchical memory",
 * Journal of Supercomputing 4, 1990 (Stockham's framework).
 */

/** Least power of two that holds a length. */
export const powerAbove = (length: number): number => 2 ** Math.ceil(Math.log2(Math.max(2, length)));

/** Several numbers of one kind, the real parts apart from the imaginary ones. */
interface Parts {
  real: Float64Array;
  imaginary: Float64Array;
}

/** Turns of each length, made once. */
const circles = new Map<number, Parts>();

function circleOf(length: number): Parts {
  const known = circles.get(length);
  if (known !== undefined) return known;
  const turn = (of: (angle: number) => number) =>
    Float64Array.from({ length }, (_, at) => of((2 * Math.PI * at) / length));
  const circle = { real: turn(Math.cos), imaginary: turn(Math.sin) };
  circles.set(length, circle);
  return circle;
}

/**
 * Transforms `count` series of one length at once: the numbers of one moment lie beside each other. The result lies in
 * what is returned.
 */
function transformAll(from: Parts, to: Parts, length: number, count: number, sign: 1 | -1): Parts {
  const { real: cosine, imaginary: sine } = circleOf(length);
  let [here, there] = [from, to];
  let [left, stride] = [length, count];
  for (; left >= 4; left /= 4, stride *= 4) {
    const quarter = left / 4;
    const step = length / left;
    const { real: r, imaginary: i } = here;
    const { real: outR, imaginary: outI } = there;
    for (let p = 0; p < quarter; p++) {
      const [c1, s1] = [cosine[p * step]!, sign * sine[p * step]!];
      const [c2, s2] = [cosine[2 * p * step]!, sign * sine[2 * p * step]!];
      const [c3, s3] = [cosine[3 * p * step]!, sign * sine[3 * p * step]!];
      const a = p * stride;
      const b = a + quarter * stride;
      const c = b + quarter * stride;
      const d = c + quarter * stride;
      const out = 4 * a;
      for (let q = 0; q < stride; q++) {
        const sumR = r[a + q]! + r[c + q]!;
        const sumI = i[a + q]! + i[c + q]!;
        const apartR = r[a + q]! - r[c + q]!;
        const apartI = i[a + q]! - i[c + q]!;
        const oddR = r[b + q]! + r[d + q]!;
        const oddI = i[b + q]! + i[d + q]!;
        // A quarter turn of the difference.
        const turnedR = sign * (i[d + q]! - i[b + q]!);
        const turnedI = sign * (r[b + q]! - r[d + q]!);
        outR[out + q] = sumR + oddR;
        outI[out + q] = sumI + oddI;
        const oneR = apartR + turnedR;
        const oneI = apartI + turnedI;
        outR[out + stride + q] = c1 * oneR - s1 * oneI;
        outI[out + stride + q] = c1 * oneI + s1 * oneR;
        const twoR = sumR - oddR;
        const twoI = sumI - oddI;
        outR[out + 2 * stride + q] = c2 * twoR - s2 * twoI;
        outI[out + 2 * stride + q] = c2 * twoI + s2 * twoR;
        const threeR = apartR - turnedR;
        const threeI = apartI - turnedI;
        outR[out + 3 * stride + q] = c3 * threeR - s3 * threeI;
        outI[out + 3 * stride + q] = c3 * threeI + s3 * threeR;
      }
    }
    [here, there] = [there, here];
  }
  if (left === 2) {
    const { real: r, imaginary: i } = here;
    const { real: outR, imaginary: outI } = there;
    for (let q = 0; q < stride; q++) {
      outR[q] = r[q]! + r[q + stride]!;
      outI[q] = i[q]! + i[q + stride]!;
      outR[q + stride] = r[q]! - r[q + stride]!;
      outI[q + stride] = i[q]! - i[q + stride]!;
    }
    return there;
  }
  return here;
}

const partsOf = (length: number): Parts => ({ real: new Float64Array(length), imaginary: new Float64Array(length) });

/** One series, in place. */
export function transform(real: Float64Array, imaginary: Float64Array, back = false): void {
  const { length } = real;
  const done = transformAll({ real, imaginary }, partsOf(length), length, 1, back ? 1 : -1);
  const by = back ? 1 / length : 1;
  for (let at = 0; at < length; at++) {
    real[at] = done.real[at]! * by;
    imaginary[at] = done.imaginary[at]! * by;
  }
}

/**
 * The spectrum of a plane of plain numbers: of each of its rows the frequencies 0 to half the width, the others being
 * their mirror image.
 */
export interface HalfSpectrum extends Parts {
  /** Of the plane. */
  width: number;
  height: number;
}

/** The spectrum of rows of `width` numbers; both sides are powers of two. From row `filled` on, all are zero. */
export function spectrumOf(plane: Float64Array, width: number, filled = plane.length / width): HalfSpectrum {
  const height = plane.length / width;
  const half = width / 2 + 1;
  const spectrum = partsOf(height * half);
  const [pair, spare] = [partsOf(width), partsOf(width)];
  // Two rows at once, one as the imaginary part of the other.
  for (let row = 0; row < filled; row += 2) {
    pair.real.set(plane.subarray(row * width, (row + 1) * width));
    if (row + 1 < height) pair.imaginary.set(plane.subarray((row + 1) * width, (row + 2) * width));
    else pair.imaginary.fill(0);
    const { real: r, imaginary: i } = transformAll(pair, spare, width, 1, -1);
    for (let k = 0; k < half; k++) {
      const mirror = (width - k) % width;
      const at = row * half + k;
      spectrum.real[at] = (r[k]! + r[mirror]!) / 2;
      spectrum.imaginary[at] = (i[k]! - i[mirror]!) / 2;
      if (row + 1 === height) continue;
      spectrum.real[at + half] = (i[k]! + i[mirror]!) / 2;
      spectrum.imaginary[at + half] = (r[mirror]! - r[k]!) / 2;
    }
  }
  transformColumns(spectrum, half, height, -1);
  return { ...spectrum, width, height };
}

/** The plane of plain numbers that has a spectrum; the spectrum is used up. */
export function planeOf(spectrum: HalfSpectrum): Float64Array {
  const { width, height, real, imaginary } = spectrum;
  const half = width / 2 + 1;
  transformColumns(spectrum, half, height, 1);
  const plane = new Float64Array(width * height);
  const [pair, spare] = [partsOf(width), partsOf(width)];
  const by = 1 / (width * height);
  for (let row = 0; row < height; row += 2) {
    const one = row * half;
    const two = row + 1 < height ? one + half : -1;
    for (let k = 0; k < width; k++) {
      const at = k < half ? k : width - k;
      const sign = k < half ? 1 : -1;
      const [twoR, twoI] = two < 0 ? [0, 0] : [real[two + at]!, sign * imaginary[two + at]!];
      pair.real[k] = real[one + at]! - twoI;
      pair.imaginary[k] = sign * imaginary[one + at]! + twoR;
    }
    const done = transformAll(pair, spare, width, 1, 1);
    for (let at = 0; at < width; at++) {
      plane[row * width + at] = done.real[at]! * by;
      if (two >= 0) plane[(row + 1) * width + at] = done.imaginary[at]! * by;
    }
  }
  return plane;
}

/** So many columns at once lie in a processor's nearer memory. */
const together = 16;

function transformColumns({ real, imaginary }: Parts, width: number, height: number, sign: 1 | -1): void {
  const [block, spare] = [partsOf(height * together), partsOf(height * together)];
  for (let from = 0; from < width; from += together) {
    const count = Math.min(together, width - from);
    for (let row = 0; row < height; row++) {
      const at = row * width + from;
      block.real.set(real.subarray(at, at + count), row * count);
      block.imaginary.set(imaginary.subarray(at, at + count), row * count);
    }
    const done = transformAll(block, spare, height, count, sign);
    for (let row = 0; row < height; row++) {
      const at = row * width + from;
      real.set(done.real.subarray(row * count, (row + 1) * count), at);
      imaginary.set(done.imaginary.subarray(row * count, (row + 1) * count), at);
    }
  }
}
