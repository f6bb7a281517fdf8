import type { GreyImage, PixelImage } from './types';

/** Brightness as the eye weighs it (Rec. ITU-R BT.601 luma), 0 to 255. Transparent pixels show white behind them. */
export function greyOf(image: PixelImage): GreyImage {
  const { width, height, data } = image;
  const grey = new Float32Array(width * height);
  for (let at = 0, from = 0; at < grey.length; at++, from += 4) {
    const luma = 0.299 * data[from]! + 0.587 * data[from + 1]! + 0.114 * data[from + 2]!;
    const opaque = data[from + 3]! / 255;
    grey[at] = luma * opaque + 255 * (1 - opaque);
  }
  return { width, height, data: grey };
}

/** Grey pixels as colour pixels, for engines that take only those. */
export function pixelsOf(image: GreyImage): PixelImage {
  const data = new Uint8ClampedArray(image.width * image.height * 4);
  for (let at = 0; at < image.data.length; at++) {
    const value = image.data[at]!;
    data[at * 4] = value;
    data[at * 4 + 1] = value;
    data[at * 4 + 2] = value;
    data[at * 4 + 3] = 255;
  }
  return { width: image.width, height: image.height, data };
}

/** Dark becomes light and light dark. */
export function invert(image: GreyImage): GreyImage {
  return { ...image, data: image.data.map((value) => 255 - value) };
}
