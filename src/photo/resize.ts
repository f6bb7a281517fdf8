import { release } from './release';
import type { GreyImage, PixelImage } from './types';

/** The size that fits inside `longest` pixels a side, never larger than the image, never below one pixel. */
export function sizeWithin(width: number, height: number, longest: number): { width: number; height: number } {
  const share = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * share)), height: Math.max(1, Math.round(height * share)) };
}

/** Each new pixel is the mean of the area it covers when shrinking, and lies between its neighbours when growing. */
export function resizeGrey(image: GreyImage, width: number, height: number): GreyImage {
  const across = spread(image.width, width);
  const down = spread(image.height, height);
  return { width, height, data: resampleChannel(image.data, image.width, across, down, 1, 0) };
}

export function resizePixels(image: PixelImage, width: number, height: number): PixelImage {
  const across = spread(image.width, width);
  const down = spread(image.height, height);
  const data = new Uint8ClampedArray(width * height * 4);
  for (let channel = 0; channel < 4; channel++) {
    const plane = resampleChannel(image.data, image.width, across, down, 4, channel);
    for (let at = 0; at < plane.length; at++) data[at * 4 + channel] = plane[at]!;
    release(plane);
  }
  return { width, height, data };
}

/** For each target place: the first source place, how many from there on count, and their weights, `most` a place. */
interface Taps {
  first: Int32Array;
  count: Int32Array;
  weights: Float32Array;
  most: number;
}

function spread(from: number, to: number): Taps {
  const ratio = from / to;
  const reach = Math.max(1, ratio);
  const most = Math.ceil(2 * reach) + 2;
  const taps = { first: new Int32Array(to), count: new Int32Array(to), weights: new Float32Array(to * most), most };
  for (let place = 0; place < to; place++) {
    const centre = (place + 0.5) * ratio;
    const low = Math.max(0, Math.floor(centre - reach));
    const high = Math.min(from - 1, Math.ceil(centre + reach));
    const at = place * most;
    let sum = 0;
    for (let tap = low; tap <= high; tap++) {
      const weight = Math.max(0, 1 - Math.abs(tap + 0.5 - centre) / reach);
      taps.weights[at + tap - low] = weight;
      sum += weight;
    }
    for (let tap = 0; tap <= high - low; tap++) taps.weights[at + tap] = taps.weights[at + tap]! / sum;
    taps.first[place] = low;
    taps.count[place] = high - low + 1;
  }
  return taps;
}

function resampleChannel(
  source: ArrayLike<number>,
  sourceWidth: number,
  across: Taps,
  down: Taps,
  stride: number,
  offset: number,
): Float32Array {
  const width = across.first.length;
  const height = down.first.length;
  // Only as many narrowed rows as one target row needs: all of them would be as large as the image.
  const rows = new Float32Array(width * down.most);
  const sums = new Float32Array(width);
  const out = new Float32Array(width * height);
  let narrowed = 0;
  for (let row = 0; row < height; row++) {
    const from = down.first[row]!;
    const count = down.count[row]!;
    for (narrowed = Math.max(narrowed, from); narrowed < from + count; narrowed++) {
      narrow(source, narrowed * sourceWidth, across, stride, offset, rows, (narrowed % down.most) * width);
    }
    sums.fill(0);
    for (let tap = 0; tap < count; tap++) {
      const weight = down.weights[row * down.most + tap]!;
      if (weight !== 0) addRow(sums, rows, ((from + tap) % down.most) * width, weight);
    }
    out.set(sums, row * width);
  }
  return out;
}

/** One row of the source, narrowed. Small functions on plain arrays: an engine compiles them best. */
function narrow(
  source: ArrayLike<number>,
  start: number,
  { first, count, weights, most }: Taps,
  stride: number,
  offset: number,
  rows: Float32Array,
  to: number,
): void {
  for (let column = 0; column < first.length; column++) {
    const at = column * most;
    const taps = count[column]!;
    let from = (start + first[column]!) * stride + offset;
    let sum = 0;
    for (let tap = 0; tap < taps; tap++, from += stride) sum += weights[at + tap]! * source[from]!;
    rows[to + column] = sum;
  }
}

function addRow(sums: Float32Array, rows: Float32Array, from: number, weight: number): void {
  for (let column = 0; column < sums.length; column++) sums[column] = sums[column]! + weight * rows[from + column]!;
}
