import { resizeGrey, sizeWithin } from './resize';
import type { GreyImage } from './types';
import { varianceOf } from './variance';

/**
 * How much of a photo's contrast lies in its finest detail: the deviation of the discrete Laplacian in the sharpest
 * twentieth of the photo's 32-pixel squares, over the deviation of the photo's brightness. Blur lowers it; about 0.05
 * and less is a photo in which no small character could be seen (own measurement on our rendered photographs).
 * @internal
 */
export function sharpness(image: GreyImage): number {
  const { width, height, data } = image;
  const square = 32;
  const strengths: number[] = [];
  for (let top = 1; top + square < height; top += square) {
    for (let left = 1; left + square < width; left += square) {
      strengths.push(Math.sqrt(squaredLaplacians(image, left, top, square)) / square);
    }
  }
  if (strengths.length === 0) return 0;
  strengths.sort((a, b) => b - a);
  const sharpest = strengths[Math.floor(strengths.length / 20)]!;
  return sharpest / (Math.sqrt(varianceOf(data)) + 4);
}

/**
 * Whether a photo is too small or too blurred to say that it shows no stamp: a code of six characters that fills a
 * fifth of a 400 px photo is 13 px a character, the least that anyone can read.
 */
export function isTooWeak(image: GreyImage, sharp: number = judgedSharpness(image)): boolean {
  if (Math.max(image.width, image.height) < 400 || Math.min(image.width, image.height) < 200) return true;
  return sharp < 0.05;
}

/** The sharpness of a photo at the size at which it is judged: a larger one spreads the same edge over more pixels. */
export function judgedSharpness(image: GreyImage): number {
  const { width, height } = sizeWithin(image.width, image.height, 1200);
  return sharpness(width === image.width ? image : resizeGrey(image, width, height));
}

/** A function of its own, called a thousand times a photo, so that it is soon compiled and its sums stay numbers. */
function squaredLaplacians({ width, data }: GreyImage, left: number, top: number, square: number): number {
  let sum = 0;
  for (let row = top; row < top + square; row++) {
    for (let column = left; column < left + square; column++) {
      const at = row * width + column;
      const laplacian = 4 * data[at]! - data[at - 1]! - data[at + 1]! - data[at - width]! - data[at + width]!;
      sum += laplacian * laplacian;
    }
  }
  return sum;
}
