import type { GreyImage } from './types';

/** Sums over every rectangle from the top left corner, one row and column larger than the image. */
export function summedArea(image: GreyImage, power: 1 | 2 = 1): Float64Array {
  const { width, height, data } = image;
  const sums = new Float64Array((width + 1) * (height + 1));
  for (let row = 0; row < height; row++) {
    let rowSum = 0;
    for (let column = 0; column < width; column++) {
      const value = data[row * width + column]!;
      rowSum += power === 1 ? value : value * value;
      sums[(row + 1) * (width + 1) + column + 1] = sums[row * (width + 1) + column + 1]! + rowSum;
    }
  }
  return sums;
}

/** Mean of the square of `2 radius + 1` pixels around each pixel, cut off at the image's edge. */
export function boxMean(image: GreyImage, radiusX: number, radiusY: number = radiusX): GreyImage {
  const sums = summedArea(image);
  return { ...image, data: boxMeans(sums, image.width, image.height, radiusX, radiusY) };
}

function boxMeans(sums: Float64Array, width: number, height: number, radiusX: number, radiusY: number): Float32Array {
  const means = new Float32Array(width * height);
  const line = width + 1;
  for (let row = 0; row < height; row++) {
    const top = Math.max(0, row - radiusY);
    const bottom = Math.min(height, row + radiusY + 1);
    for (let column = 0; column < width; column++) {
      const left = Math.max(0, column - radiusX);
      const right = Math.min(width, column + radiusX + 1);
      const sum =
        sums[bottom * line + right]! -
        sums[top * line + right]! -
        sums[bottom * line + left]! +
        sums[top * line + left]!;
      means[row * width + column] = sum / ((bottom - top) * (right - left));
    }
  }
  return means;
}

/** Deviation of the square around each pixel, same square as `boxMean`. */
export function boxDeviation(image: GreyImage, radius: number): GreyImage {
  const means = boxMean(image, radius).data;
  const squares = boxMeans(summedArea(image, 2), image.width, image.height, radius, radius);
  return { ...image, data: squares.map((square, at) => Math.sqrt(Math.max(0, square - means[at]! ** 2))) };
}

/**
 * Takes out slow changes of light: each pixel less the mean around it, over the deviation around it, around 128 with
 * `gain` steps for one deviation. `floor` (steps of 255) keeps noise on even ground from being blown up.
 */
export function flatten(image: GreyImage, radius: number, gain = 48, floor = 6): GreyImage {
  const means = boxMean(image, radius).data;
  const deviations = boxDeviation(image, radius).data;
  const data = image.data.map((value, at) => {
    const raised = 128 + ((value - means[at]!) / (deviations[at]! + floor)) * gain;
    return Math.min(255, Math.max(0, raised));
  });
  return { ...image, data };
}

/** Stretches the values between two quantiles (0 to 1) to 0 and 255. */
export function stretch(image: GreyImage, low = 0.01, high = 0.99): GreyImage {
  const counts = histogram(image);
  const at = (share: number): number => {
    let passed = 0;
    for (let value = 0; value < 256; value++) {
      passed += counts[value]!;
      if (passed >= share * image.data.length) return value;
    }
    return 255;
  };
  const from = at(low);
  const to = Math.max(from + 1, at(high));
  return {
    ...image,
    data: image.data.map((value) => Math.min(255, Math.max(0, ((value - from) / (to - from)) * 255))),
  };
}

/** How many pixels have each of the 256 values. */
export function histogram(image: GreyImage): Uint32Array {
  const counts = new Uint32Array(256);
  for (const value of image.data) counts[Math.min(255, Math.max(0, Math.round(value)))]!++;
  return counts;
}
