import { boxDeviation, boxMean, type GreyImage } from '../../photo';

/** How a stamp differs from its ground: darker (ink, shadow in a press), lighter (foil), or by its edges (relief). */
export type Polarity = 'dark' | 'light' | 'relief';

/**
 * Maps that are above 0 where a stroke may be: how far the pixel stands out from its surroundings in the polarity's
 * sense, in deviations of those surroundings. `stroke` is the width looked for and `around` the half-width of the
 * surroundings, pixels.
 */
export function strokeMaps(image: GreyImage, stroke: number, around: number): Record<Polarity, GreyImage> {
  const smooth = boxMean(boxMean(image, stroke), Math.max(1, stroke >> 1));
  const light = standOut(smooth, around);
  const dark = { ...light, data: light.data.map((value) => -value) };
  return { dark, light, relief: standOut(edgeEnergy(smooth, stroke), around) };
}

function standOut(image: GreyImage, around: number): GreyImage {
  const mean = boxMean(image, around).data;
  const deviation = boxDeviation(image, around).data;
  const data = image.data.map((value, at) => (value - mean[at]!) / (deviation[at]! + 1.5));
  return { ...image, data };
}

/** Strength of edges, gathered over about a stroke's width, so that both flanks of a pressed stroke join. */
function edgeEnergy(image: GreyImage, stroke: number): GreyImage {
  const { width, height, data } = image;
  const edges = new Float32Array(data.length);
  for (let row = 1; row < height - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
      const at = row * width + column;
      edges[at] = Math.hypot(data[at + 1]! - data[at - 1]!, data[at + width]! - data[at - width]!);
    }
  }
  return boxMean({ width, height, data: edges }, Math.max(1, stroke));
}
