import type { GreyImage, PixelImage, Point, Quad } from './types';

/** A projective map of the plane, row by row, the last entry 1. */
export type Projection = [number, number, number, number, number, number, number, number];

/**
 * The projection that takes the corners (0, 0), (width, 0), (width, height), (0, height) of a rectangle to the quad's.
 * Null when the quad has three corners in a line.
 */
export function projectionOnto(quad: Quad, width: number, height: number): Projection | null {
  const [a, b, c, d] = quad;
  const dx1 = b.x - c.x;
  const dx2 = d.x - c.x;
  const dy1 = b.y - c.y;
  const dy2 = d.y - c.y;
  const sx = a.x - b.x + c.x - d.x;
  const sy = a.y - b.y + c.y - d.y;
  const area = dx1 * dy2 - dx2 * dy1;
  if (!(Math.abs(area) > 1e-6) || !(width > 0) || !(height > 0)) return null;
  const g = (sx * dy2 - dx2 * sy) / area;
  const h = (dx1 * sy - sx * dy1) / area;
  return [
    (b.x - a.x + g * b.x) / width,
    (d.x - a.x + h * d.x) / height,
    a.x,
    (b.y - a.y + g * b.y) / width,
    (d.y - a.y + h * d.y) / height,
    a.y,
    g / width,
    h / height,
  ];
}

/** Where a projection takes a point. */
export function project(projection: Projection, x: number, y: number): Point {
  const [a, b, c, d, e, f, g, h] = projection;
  const scale = g * x + h * y + 1;
  return { x: (a * x + b * y + c) / scale, y: (d * x + e * y + f) / scale };
}

/** The way back of a projection; null where (0, 0) comes from infinitely far away, so that no last entry can be 1. */
export function backOf([a, b, c, d, e, f, g, h]: Projection): Projection | null {
  const last = a * e - b * d;
  if (!(Math.abs(last) > 1e-9)) return null;
  return [
    (e - f * h) / last,
    (c * h - b) / last,
    (b * f - c * e) / last,
    (f * g - d) / last,
    (a - c * g) / last,
    (c * d - a * f) / last,
    (d * h - e * g) / last,
    (b * g - a * h) / last,
  ];
}

/** Value between the four pixels around a point; outside the image the nearest edge pixel counts. */
export function sampleGrey(image: GreyImage, x: number, y: number): number {
  const { width, height, data } = image;
  const left = Math.min(width - 1, Math.max(0, x - 0.5));
  const top = Math.min(height - 1, Math.max(0, y - 0.5));
  const column = Math.min(width - 1, Math.floor(left));
  const row = Math.min(height - 1, Math.floor(top));
  const right = Math.min(width - 1, column + 1);
  const below = Math.min(height - 1, row + 1);
  const alongX = left - column;
  const alongY = top - row;
  const upper = data[row * width + column]! * (1 - alongX) + data[row * width + right]! * alongX;
  const lower = data[below * width + column]! * (1 - alongX) + data[below * width + right]! * alongX;
  return upper * (1 - alongY) + lower * alongY;
}

/**
 * The quad of an image as an upright rectangle of the given size, or null when the quad is flat. Where the quad is
 * much larger than the rectangle, several points a pixel are averaged.
 */
export function warpQuad(image: GreyImage, quad: Quad, width: number, height: number): GreyImage | null {
  const projection = projectionOnto(quad, width, height);
  if (projection === null) return null;
  const { across, down } = quadSize(quad);
  const pointsX = Math.min(6, Math.max(1, Math.round(across / width)));
  const pointsY = Math.min(6, Math.max(1, Math.round(down / height)));
  const [a, b, c, d, e, f, g, h] = projection;
  const data = new Float32Array(width * height);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      let sum = 0;
      for (let py = 0; py < pointsY; py++) {
        for (let px = 0; px < pointsX; px++) {
          // As `project` does, without a point on the heap for each of some hundred thousand samples.
          const x = column + (px + 0.5) / pointsX;
          const y = row + (py + 0.5) / pointsY;
          const scale = g * x + h * y + 1;
          sum += sampleGrey(image, (a * x + b * y + c) / scale, (d * x + e * y + f) / scale);
        }
      }
      data[row * width + column] = sum / (pointsX * pointsY);
    }
  }
  return { width, height, data };
}

/** Mean length of the quad's long sides (as the text runs) and of its short ones, pixels. */
export function quadSize(quad: Quad): { across: number; down: number } {
  const [a, b, c, d] = quad;
  const length = (from: Point, to: Point): number => Math.hypot(to.x - from.x, to.y - from.y);
  return { across: (length(a, b) + length(d, c)) / 2, down: (length(a, d) + length(b, c)) / 2 };
}

/** The rectangle around a quad, pixels. */
export function quadBounds(quad: Quad): { x0: number; y0: number; x1: number; y1: number } {
  const xs = quad.map((corner) => corner.x);
  const ys = quad.map((corner) => corner.y);
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}

/** A turned rectangle as a quad: its middle, its size, and its turn in degrees, clockwise. */
export function turnedQuad(middle: Point, width: number, height: number, degrees: number): Quad {
  const cosine = Math.cos((degrees * Math.PI) / 180);
  const sine = Math.sin((degrees * Math.PI) / 180);
  const corner = (x: number, y: number): Point => ({
    x: middle.x + x * cosine - y * sine,
    y: middle.y + x * sine + y * cosine,
  });
  const w = width / 2;
  const h = height / 2;
  return [corner(-w, -h), corner(w, -h), corner(w, h), corner(-w, h)];
}

/** The part of an image in a rectangle of whole pixels that lies inside it. */
export function cropPixels(image: PixelImage, left: number, top: number, width: number, height: number): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let row = 0; row < height; row++) {
    const from = ((top + row) * image.width + left) * 4;
    data.set(image.data.subarray(from, from + width * 4), row * width * 4);
  }
  return { width, height, data };
}

/** The part of an image in a rectangle that lies inside it; corners are rounded outwards to whole pixels. */
export function cropGrey(image: GreyImage, x0: number, y0: number, x1: number, y1: number): GreyImage {
  const left = Math.min(image.width - 1, Math.max(0, Math.floor(x0)));
  const top = Math.min(image.height - 1, Math.max(0, Math.floor(y0)));
  const width = Math.max(1, Math.min(image.width, Math.ceil(x1)) - left);
  const height = Math.max(1, Math.min(image.height, Math.ceil(y1)) - top);
  const data = new Float32Array(width * height);
  for (let row = 0; row < height; row++) {
    const from = (top + row) * image.width + left;
    data.set(image.data.subarray(from, from + width), row * width);
  }
  return { width, height, data };
}
