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
  }
  return { width, height, data };
}

/** For each target place: the first source place and the weights from there on. */
interface Taps {
  first: Int32Array;
  weights: Float32Array[];
}

function spread(from: number, to: number): Taps {
  const ratio = from / to;
  const reach = Math.max(1, ratio);
  const first = new Int32Array(to);
  const weights: Float32Array[] = [];
  for (let place = 0; place < to; place++) {
    const centre = (place + 0.5) * ratio;
    const low = Math.max(0, Math.floor(centre - reach));
    const high = Math.min(from - 1, Math.ceil(centre + reach));
    const taps = new Float32Array(high - low + 1);
    let sum = 0;
    for (let tap = low; tap <= high; tap++) {
      const weight = Math.max(0, 1 - Math.abs(tap + 0.5 - centre) / reach);
      taps[tap - low] = weight;
      sum += weight;
    }
    first[place] = low;
    weights.push(taps.map((weight) => weight / sum));
  }
  return { first, weights };
}

function resampleChannel(
  source: ArrayLike<number>,
  sourceWidth: number,
  across: Taps,
  down: Taps,
  stride: number,
  offset: number,
): Float32Array {
  const width = across.weights.length;
  const height = down.weights.length;
  // Only as many narrowed rows as one target row needs: all of them would be as large as the image.
  const held = down.weights.reduce((most, { length }) => Math.max(most, length), 1);
  const rows = new Float32Array(width * held);
  const narrow = (row: number): void => {
    const start = row * sourceWidth;
    const to = (row % held) * width;
    for (let column = 0; column < width; column++) {
      const taps = across.weights[column]!;
      const from = start + across.first[column]!;
      let sum = 0;
      for (let tap = 0; tap < taps.length; tap++) sum += taps[tap]! * source[(from + tap) * stride + offset]!;
      rows[to + column] = sum;
    }
  };
  const out = new Float32Array(width * height);
  let narrowed = 0;
  for (let row = 0; row < height; row++) {
    const taps = down.weights[row]!;
    const from = down.first[row]!;
    for (narrowed = Math.max(narrowed, from); narrowed < from + taps.length; narrowed++) narrow(narrowed);
    for (let tap = 0; tap < taps.length; tap++) {
      const weight = taps[tap]!;
      if (weight === 0) continue;
      const start = ((from + tap) % held) * width;
      for (let column = 0; column < width; column++) out[row * width + column]! += weight * rows[start + column]!;
    }
  }
  return out;
}
