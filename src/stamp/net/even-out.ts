import type { GreyImage } from '../../photo';

/**
 * Mean 0 and deviation 1, held between -4 and 4; nearly even ground is not blown up. What the given size has more than
 * the image, on the right and below, is 0. Counted loops: with an iterator or a callback every pixel is an object on
 * the heap, 50 MB a photo.
 */
export function evenOut(image: GreyImage, width: number = image.width, height: number = image.height): Float32Array {
  const { data } = image;
  let sum = 0;
  for (let at = 0; at < data.length; at++) sum += data[at]!;
  const mean = sum / data.length;
  let squares = 0;
  for (let at = 0; at < data.length; at++) squares += (data[at]! - mean) ** 2;
  const deviation = Math.max(4, Math.sqrt(squares / data.length));
  const even = new Float32Array(width * height);
  for (let row = 0; row < image.height; row++) {
    const from = row * image.width;
    const to = row * width;
    for (let column = 0; column < image.width; column++) {
      even[to + column] = Math.min(4, Math.max(-4, (data[from + column]! - mean) / deviation));
    }
  }
  return even;
}
