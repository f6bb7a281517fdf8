import { greyOf } from './grey';
import type { PixelImage } from './types';
import { cropPixels } from './warp';

/**
 * What lies around the piece: the strip along the photo's four edges. All three in steps of 255. A studio or a cut-out
 * puts an even, light ground there; a camera's ground falls off in light and carries the sensor's noise. That the two
 * differ so is common practice, no source.
 */
export interface Background {
  /** Mean brightness of the darkest of the four edges. */
  lightness: number;
  /** Between the hundredth darkest and the hundredth lightest pixel of the strip. */
  spread: number;
  /** Mean step from a pixel to its neighbour in the row; 1.1 times the deviation of uncorrelated noise. */
  noise: number;
}

/** The strip is this share of the shorter side, at least two pixels. */
const stripShare = 0.03;

/** Measured on the photo's own pixels: shrinking would average the noise away. */
export function backgroundOf(image: PixelImage): Background {
  const { width, height } = image;
  const strip = Math.max(2, Math.round(Math.min(width, height) * stripShare));
  const edges = [
    cropPixels(image, 0, 0, width, strip),
    cropPixels(image, 0, height - strip, width, strip),
    cropPixels(image, 0, 0, strip, height),
    cropPixels(image, width - strip, 0, strip, height),
  ].map(greyOf);
  const counts = new Uint32Array(256);
  let total = 0;
  let steps = 0;
  let pairs = 0;
  let lightness = 255;
  for (const { width: across, data } of edges) {
    let sum = 0;
    for (let at = 0; at < data.length; at++) {
      const value = data[at]!;
      sum += value;
      counts[Math.min(255, Math.round(value))]!++;
      if (at % across === 0) continue;
      steps += Math.abs(value - data[at - 1]!);
      pairs++;
    }
    total += data.length;
    lightness = Math.min(lightness, sum / data.length);
  }
  const spread = valueAt(counts, total * 0.99) - valueAt(counts, total * 0.01);
  return { lightness: hundredths(lightness), spread, noise: hundredths(steps / pairs) };
}

/** The brightness that `rank` pixels do not exceed. */
function valueAt(counts: Uint32Array, rank: number): number {
  let passed = 0;
  for (let value = 0; value < 256; value++) {
    passed += counts[value]!;
    if (passed >= rank) return value;
  }
  return 255;
}

const hundredths = (value: number) => Math.round(value * 100) / 100;
