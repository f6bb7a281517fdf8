import type { PixelImage, Point } from '../../types';
import { type Light, lightOf } from './lab';

/** What a patch sends to the camera. */
export interface Patch {
  light: Light;
  /** Half-width of the mean in 95 of 100 cases, as a share of the light: pixels of one place are much alike, so few of them count. */
  spread: number;
  pixels: number;
  /** Share of pixels that have a channel at its end, where light is lost. */
  clipped: number;
}

const lights = Float64Array.from({ length: 256 }, (_, step) => lightOf(step));
/** Steps next to the ends count as ends: JPEG blurs the edge. */
const [blackest, brightest] = [1, 253];
/**
 * A step from which the brightest channel of a colour tells that another at its end lost light: the colour is more vivid
 * than the photo's own three can make it. In what is darker, no more was lost than cannot be seen.
 */
const vividFrom = 40;
const mostPixels = 20_000;

/** The middle half of a patch's pixels by brightness, as light: glints, holes and dust lie outside. Null with fewer than 12 pixels. */
export function readPatch(image: PixelImage, outline: readonly Point[]): Patch | null {
  const at = pixelsIn(image, outline);
  if (at.length < 12) return null;
  const bright = (from: number): number =>
    0.2126 * lights[image.data[from]!]! +
    0.7152 * lights[image.data[from + 1]!]! +
    0.0722 * lights[image.data[from + 2]!]!;
  const order = Float64Array.from(at, bright);
  const sorted = order.slice().sort();
  const [low, high] = [sorted[Math.floor(at.length * 0.25)]!, sorted[Math.ceil(at.length * 0.75) - 1]!];
  const sum: [number, number, number] = [0, 0, 0];
  let [kept, clipped] = [0, 0];
  at.forEach((from, place) => {
    const steps = [0, 1, 2].map((channel) => image.data[from + channel]!);
    const most = Math.max(...steps);
    const isVivid = most >= vividFrom && Math.min(...steps) <= blackest;
    if (most > brightest || most < blackest || isVivid) clipped++;
    if (order[place]! < low || order[place]! > high) return;
    steps.forEach((step, channel) => {
      sum[channel]! += lights[step]!;
    });
    kept++;
  });
  const light: Light = [sum[0] / kept, sum[1] / kept, sum[2] / kept];
  const mean = (low + high) / 2;
  const spread = mean > 0 ? ((high - low) / 1.35 / mean) * (1.96 / Math.sqrt(Math.min(64, at.length / 9))) : 0;
  return { light, spread, pixels: at.length, clipped: clipped / at.length };
}

/** Where the pixels of a polygon start, thinned evenly when there are very many. */
function pixelsIn({ width, height }: PixelImage, outline: readonly Point[]): number[] {
  const xs = outline.map(({ x }) => x);
  const ys = outline.map(({ y }) => y);
  const [left, right] = [Math.max(0, Math.floor(Math.min(...xs))), Math.min(width, Math.ceil(Math.max(...xs)))];
  const [top, bottom] = [Math.max(0, Math.floor(Math.min(...ys))), Math.min(height, Math.ceil(Math.max(...ys)))];
  const step = Math.max(1, Math.floor(Math.sqrt(((right - left) * (bottom - top)) / mostPixels)));
  const found: number[] = [];
  for (let y = top; y < bottom; y += step) {
    for (let x = left; x < right; x += step) if (holds(outline, x + 0.5, y + 0.5)) found.push((y * width + x) * 4);
  }
  return found;
}

function holds(outline: readonly Point[], x: number, y: number): boolean {
  let inside = false;
  outline.forEach((to, at) => {
    const from = outline.at(at - 1)!;
    if (from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x)) inside = !inside;
  });
  return inside;
}

/** The outline that a few points mean: one the middle of a small square, two opposite corners of a box, more their polygon. */
export function outlineOf(points: readonly Point[], image: PixelImage): Point[] {
  const [first, second] = points;
  if (first === undefined || points.length > 2) return [...points];
  const reach = Math.max(4, Math.max(image.width, image.height) * 0.006);
  const [a, b] =
    second === undefined
      ? [
          { x: first.x - reach, y: first.y - reach },
          { x: first.x + reach, y: first.y + reach },
        ]
      : [first, second];
  return [a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }];
}
