import { boxDeviation, boxMean, type GreyImage } from '../../photo';

/** How a stamp differs from its ground: darker (ink, shadow in a press), lighter (foil), or by its edges (relief). */
export type Polarity = 'dark' | 'light' | 'relief';

/**
 * A map that is above 0 where a stroke may be: how far the pixel stands out from its surroundings in the polarity's
 * sense, in deviations of those surroundings. `stroke` is the width looked for and `around` the half-width of the
 * surroundings, pixels.
 */
export function strokeMap(image: GreyImage, polarity: Polarity, stroke: number, around: number): GreyImage {
  const smooth = boxMean(boxMean(image, stroke), Math.max(1, stroke >> 1));
  if (polarity === 'relief') return standOut(edgeEnergy(smooth, stroke), around, 1);
  return standOut(smooth, around, polarity === 'light' ? 1 : -1);
}

function standOut(image: GreyImage, around: number, sign: 1 | -1): GreyImage {
  const mean = boxMean(image, around).data;
  const deviation = boxDeviation(image, around).data;
  const data = image.data.map((value, at) => (sign * (value - mean[at]!)) / (deviation[at]! + 1.5));
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
