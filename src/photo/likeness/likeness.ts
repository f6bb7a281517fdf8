import { resizeGrey } from '../resize';
import type { GreyImage } from '../types';
import { digits, side, written } from './written';

/** A photo with less from its darkest to its brightest sample, of 255, shows nothing by which it could be known again. */
const leastRange = 16;

/**
 * A photo as 32 × 32 samples of 64 steps of brightness, from its darkest to its brightest: enough to lay two photos over
 * each other. Null for one that shows next to nothing.
 */
export function likenessOf(grey: GreyImage): string | null {
  const { data } = resizeGrey(grey, side, side);
  let [least, most] = [Infinity, -Infinity];
  for (const value of data) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  if (most - least < leastRange) return null;
  const by = (digits.length - 0.001) / (most - least);
  return written(data.map((value) => Math.floor((value - least) * by)));
}
