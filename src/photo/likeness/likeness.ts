import { resizeGrey } from '../resize';
import type { GreyImage } from '../types';

/** Samples of a likeness's side. */
export const likenessSide = 32;
/** A digit for each step of brightness. Fewer steps than these and what a plain photo shows is lost between them. */
export const brightnessDigits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
/** A photo with less from its darkest to its brightest sample, of 255, shows nothing by which it could be known again. */
const leastRange = 16;

/**
 * A photo as 32 × 32 samples of 64 steps of brightness, from its darkest to its brightest: enough to lay two photos over
 * each other. Null for one that shows next to nothing.
 */
export function likenessOf(grey: GreyImage): string | null {
  const { data } = resizeGrey(grey, likenessSide, likenessSide);
  let [least, most] = [Infinity, -Infinity];
  for (const value of data) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  if (most - least < leastRange) return null;
  const by = (brightnessDigits.length - 0.001) / (most - least);
  return Array.from(data, (value) => brightnessDigits[Math.floor((value - least) * by)]).join('');
}
