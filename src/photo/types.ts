/** Colour pixels, row by row, 4 bytes each (red, green, blue, alpha), sRGB, orientation already applied. */
export interface PixelImage {
  width: number;
  height: number;
  data: Uint8ClampedArray;
}

/** Grey pixels, row by row, 0 (black) to 255 (white). */
export interface GreyImage {
  width: number;
  height: number;
  data: Float32Array;
}

/** A point in pixels; the centre of the first pixel is (0.5, 0.5), y grows downwards. */
export interface Point {
  x: number;
  y: number;
}

/** Four corners of a text line in reading order: top left, top right, bottom right, bottom left as the text stands. */
export type Quad = [Point, Point, Point, Point];
