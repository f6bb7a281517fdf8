import { boxMean, flatten } from './contrast';
import type { GreyImage } from './types';

/** From which side of the photo a surface is looked at as if light grazed it. */
export const lightSides = ['left', 'top', 'right', 'bottom'] as const;
export type LightSide = (typeof lightSides)[number];

const towards: Readonly<Record<LightSide, { x: number; y: number }>> = {
  left: { x: -1, y: 0 },
  top: { x: 0, y: -1 },
  right: { x: 1, y: 0 },
  bottom: { x: 0, y: 1 },
};

/** What changes over more than this share of the longer side counts as light. */
const slowShare = 0.02;
/** Steps of 255 that one deviation takes, and so many that noise on even ground is not raised above. */
const [gain, floor] = [44, 7];
const slopeGain = 1.6;

/**
 * A surface without the slow changes of its light, what is left raised to one contrast all over: brightness around 128.
 * With a side, the slopes of that: light where brightness rises away from the side, as light that grazes shows a raised
 * edge. It tells no print from relief, and no depth. Common practice, no source.
 */
export function reliefOf(image: GreyImage, side: LightSide | null): GreyImage {
  const { width, height } = image;
  const even = flatten(image, Math.max(4, Math.round(slowShare * Math.max(width, height))), gain, floor);
  if (side === null) return even;
  const { data } = boxMean(even, 1);
  const { x, y } = towards[side];
  const slopes = new Float32Array(data.length);
  for (let row = 0; row < height; row++) {
    const [near, far] = [within(row + y, height), within(row - y, height)];
    for (let column = 0; column < width; column++) {
      const nearer = data[near * width + within(column + x, width)]!;
      const farther = data[far * width + within(column - x, width)]!;
      slopes[row * width + column] = Math.min(255, Math.max(0, 128 + slopeGain * (farther - nearer)));
    }
  }
  return { width, height, data: slopes };
}

const within = (place: number, side: number): number => Math.min(side - 1, Math.max(0, place));
