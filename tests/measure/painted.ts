import type { PixelImage } from '../../src/photo';

/** A grey picture whose brightness, 0 to 255, is told pixel by pixel. */
export function painted(width: number, height: number, toneAt: (x: number, y: number) => number): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) data.fill(toneAt(x, y), (y * width + x) * 4, (y * width + x) * 4 + 3);
  return { width, height, data };
}
