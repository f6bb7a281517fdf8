/** Bit order and turns of one length, made once. */
interface Plan {
  order: Uint32Array;
  cosine: Float64Array;
  sine: Float64Array;
}
const plans = new Map<number, Plan>();

function planOf(length: number): Plan {
  const known = plans.get(length);
  if (known !== undefined) return known;
  const bits = Math.log2(length);
  const order = new Uint32Array(length);
  for (let at = 0; at < length; at++) {
    let turned = 0;
    for (let bit = 0; bit < bits; bit++) turned |= ((at >> bit) & 1) << (bits - 1 - bit);
    order[at] = turned;
  }
  const cosine = Float64Array.from({ length: length / 2 }, (_, at) => Math.cos((2 * Math.PI * at) / length));
  const sine = Float64Array.from({ length: length / 2 }, (_, at) => Math.sin((2 * Math.PI * at) / length));
  const plan = { order, cosine, sine };
  plans.set(length, plan);
  return plan;
}

/** Least power of two that holds a length. */
export const powerAbove = (length: number): number => 2 ** Math.ceil(Math.log2(Math.max(2, length)));

/**
 * Discrete Fourier transform in place, radix 2; the length is a power of two. Forward: e^(-2πi kn/N), nothing divided.
 * `back` turns the sign and divides by N.
 */
export function transform(real: Float64Array, imaginary: Float64Array, back = false): void {
  const length = real.length;
  const { order, cosine, sine } = planOf(length);
  for (let at = 0; at < length; at++) {
    const other = order[at]!;
    if (other <= at) continue;
    [real[at], real[other]] = [real[other]!, real[at]!];
    [imaginary[at], imaginary[other]] = [imaginary[other]!, imaginary[at]!];
  }
  const sign = back ? 1 : -1;
  for (let size = 2; size <= length; size *= 2) {
    const half = size / 2;
    const stride = length / size;
    for (let start = 0; start < length; start += size) {
      for (let at = 0; at < half; at++) {
        const [c, s] = [cosine[at * stride]!, sign * sine[at * stride]!];
        const low = start + at;
        const high = low + half;
        const r = real[high]! * c - imaginary[high]! * s;
        const i = real[high]! * s + imaginary[high]! * c;
        real[high] = real[low]! - r;
        imaginary[high] = imaginary[low]! - i;
        real[low]! += r;
        imaginary[low]! += i;
      }
    }
  }
  if (!back) return;
  for (let at = 0; at < length; at++) {
    real[at]! /= length;
    imaginary[at]! /= length;
  }
}

/** Two-dimensional transform in place of rows of `width`; both sides are powers of two. From row `filled` on, all are zero. */
export function transformPlane(
  real: Float64Array,
  imaginary: Float64Array,
  width: number,
  back = false,
  filled = real.length / width,
): void {
  const height = real.length / width;
  for (let row = 0; row < filled; row++) {
    const [from, to] = [row * width, (row + 1) * width];
    transform(real.subarray(from, to), imaginary.subarray(from, to), back);
  }
  const [columnReal, columnImaginary] = [new Float64Array(height), new Float64Array(height)];
  for (let column = 0; column < width; column++) {
    for (let row = 0; row < height; row++) {
      columnReal[row] = real[row * width + column]!;
      columnImaginary[row] = imaginary[row * width + column]!;
    }
    transform(columnReal, columnImaginary, back);
    for (let row = 0; row < height; row++) {
      real[row * width + column] = columnReal[row]!;
      imaginary[row * width + column] = columnImaginary[row]!;
    }
  }
}
