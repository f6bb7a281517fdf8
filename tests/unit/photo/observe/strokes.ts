import type { PixelImage } from '../../../../src/photo';

/** Even ground of brightness 200 with dark strokes two pixels wide, well away from the edges. */
export function strokes(width: number, height: number): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4).fill(200);
  for (let y = Math.floor(height * 0.3); y < height * 0.7; y++)
    for (let x = Math.floor(width * 0.3); x < width * 0.7; x++)
      if (x % 8 < 2) data.fill(60, (y * width + x) * 4, (y * width + x) * 4 + 3);
  for (let at = 3; at < data.length; at += 4) data[at] = 255;
  return { width, height, data };
}
