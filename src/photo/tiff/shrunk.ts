import type { PixelImage } from '../types';

/** A rectangle of upright pixels, and by how many of them on a side one pixel of the picture is the mean. */
export interface Window {
  left: number;
  top: number;
  width: number;
  height: number;
  by: number;
}

/** Takes pixels in any order and keeps the means of those inside a window. */
export interface Shrunk {
  add(x: number, y: number, colour: Float32Array): void;
  image(): PixelImage;
}

export function shrunk({ left, top, width: across, height: down, by }: Window): Shrunk {
  const [width, height] = [Math.ceil(across / by), Math.ceil(down / by)];
  const data = new Uint8ClampedArray(width * height * 4);
  const sums = by === 1 ? null : new Float32Array(width * height * 3);
  return {
    add(x, y, colour) {
      const [u, v] = [x - left, y - top];
      if (u < 0 || v < 0 || u >= across || v >= down) return;
      if (sums === null) {
        const at = (v * width + u) * 4;
        for (let channel = 0; channel < 3; channel++) data[at + channel] = colour[channel]!;
        return;
      }
      const at = (Math.floor(v / by) * width + Math.floor(u / by)) * 3;
      for (let channel = 0; channel < 3; channel++) sums[at + channel]! += colour[channel]!;
    },
    image() {
      for (let pixel = 0; pixel < width * height; pixel++) {
        data[pixel * 4 + 3] = 255;
        if (sums === null) continue;
        // At the right and lower edges fewer pixels make a mean.
        const column = pixel % width;
        const row = (pixel - column) / width;
        const count = Math.min(by, across - column * by) * Math.min(by, down - row * by);
        for (let channel = 0; channel < 3; channel++) data[pixel * 4 + channel] = sums[pixel * 3 + channel]! / count;
      }
      return { width, height, data };
    },
  };
}
