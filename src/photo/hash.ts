import { resizeGrey } from './resize';
import type { GreyImage } from './types';

/**
 * 64-bit difference hash, 16 hex digits: the photo as 9 × 8 grey pixels, one bit a pair of neighbours in a row, set
 * when the right one is brighter; rows from the top, the first bit highest.
 * Source: N. Krawetz, "Kind of like that", hackerfactor.com, 2013 (as in the ImageHash package's `dhash`).
 */
export function differenceHash(image: GreyImage): string {
  const small = resizeGrey(image, 9, 8);
  let digits = '';
  for (let row = 0; row < 8; row++) {
    let byte = 0;
    for (let column = 0; column < 8; column++) {
      const here = small.data[row * 9 + column]!;
      byte = byte * 2 + (small.data[row * 9 + column + 1]! > here ? 1 : 0);
    }
    digits += byte.toString(16).padStart(2, '0');
  }
  return digits;
}

/**
 * Number of bits in which two hashes differ, 0 to 64.
 * @internal
 */
export function hashDistance(a: string, b: string): number {
  let differing = 0;
  for (let digit = 0; digit < 16; digit++) {
    let bits = Number.parseInt(a[digit] ?? '0', 16) ^ Number.parseInt(b[digit] ?? '0', 16);
    for (; bits > 0; bits >>= 1) differing += bits & 1;
  }
  return differing;
}
