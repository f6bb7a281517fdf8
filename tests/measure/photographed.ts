import sharp from 'sharp';
import type { PixelImage, Point } from '../../src/photo/types';
import { type Projection, projectionOnto } from '../../src/photo/warp';
import type { Chance } from './random';

/** How well a photo is taken. */
export type Grade = 'clear' | 'fair' | 'hard';
export const grades: readonly Grade[] = ['clear', 'fair', 'hard'];

interface Spoilt {
  tilt: number;
  blur: [number, number];
  noise: [number, number];
  quality: [number, number];
  shade: number;
}

const spoilt: Readonly<Record<Grade, Spoilt>> = {
  clear: { tilt: 0.03, blur: [0.3, 0.8], noise: [1, 2.5], quality: [88, 95], shade: 0.1 },
  fair: { tilt: 0.09, blur: [0.6, 1.3], noise: [2, 5], quality: [70, 88], shade: 0.25 },
  hard: { tilt: 0.16, blur: [1, 2], noise: [4, 9], quality: [45, 72], shade: 0.45 },
};

/** A plane of the photo's own size as a camera sees it that is held aslant. */
export interface View {
  width: number;
  height: number;
  /** A place of the plane → the photo. */
  seen(at: Point): Point;
  /** A pixel of the photo → the plane. */
  plane(x: number, y: number): Point;
}

/** The corners of an upright rectangle of the plane as the camera sees it, from the upper left in the clock's sense. */
export const seenBox = (
  { seen }: Pick<View, 'seen'>,
  left: number,
  top: number,
  right: number,
  bottom: number,
): [Point, Point, Point, Point] => [
  seen({ x: left, y: top }),
  seen({ x: right, y: top }),
  seen({ x: right, y: bottom }),
  seen({ x: left, y: bottom }),
];

const through = ([a, b, c, d, e, f, g, h]: Projection, x: number, y: number): Point => {
  const scale = g * x + h * y + 1;
  return { x: (a * x + b * y + c) / scale, y: (d * x + e * y + f) / scale };
};

export function aslant(width: number, height: number, grade: Grade, draw: Chance): View {
  const reach = spoilt[grade].tilt * Math.min(width, height);
  const pulled = (x: number, y: number): Point => ({
    x: x + draw.between(-reach, reach),
    y: y + draw.between(-reach, reach),
  });
  const quad: [Point, Point, Point, Point] = [pulled(0, 0), pulled(width, 0), pulled(width, height), pulled(0, height)];
  const there = projectionOnto(quad, width, height)!;
  const [a, b, c, d, e, f, g, h] = there;
  // The inverse of the 3 × 3 matrix, its last entry brought to 1.
  const m = [
    e - f * h,
    c * h - b,
    b * f - c * e,
    f * g - d,
    a - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
  const back = m.slice(0, 8).map((entry) => entry / m[8]!) as unknown as Projection;
  return { width, height, seen: ({ x, y }) => through(there, x, y), plane: (x, y) => through(back, x, y) };
}

export type Paint = (at: Point) => readonly [number, number, number];

/** What the camera makes of a painted plane: nine looks a pixel, light falling off, blur, noise, JPEG. */
export async function photograph(view: View, paint: Paint, grade: Grade, draw: Chance): Promise<PixelImage> {
  const { width, height } = view;
  const rules = spoilt[grade];
  const raw = Buffer.alloc(width * height * 3);
  const shade = draw.between(-rules.shade, rules.shade);
  const lean = draw.between(-rules.shade, rules.shade);
  const looks = 2;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const sum = [0, 0, 0];
      for (let sub = 0; sub < looks * looks; sub++) {
        const place = view.plane(x + ((sub % looks) + 0.5) / looks, y + (Math.floor(sub / looks) + 0.5) / looks);
        const colour = paint(place);
        for (let channel = 0; channel < 3; channel++) sum[channel]! += colour[channel]!;
      }
      const light = 1 + shade * (x / width - 0.5) + lean * (y / height - 0.5);
      for (let channel = 0; channel < 3; channel++)
        raw[(y * width + x) * 3 + channel] = Math.max(0, Math.min(255, (sum[channel]! / (looks * looks)) * light));
    }
  }
  const blurred = await sharp(raw, { raw: { width, height, channels: 3 } })
    .blur(draw.between(...rules.blur))
    .raw()
    .toBuffer();
  const grain = draw.between(...rules.noise);
  for (let at = 0; at < blurred.length; at++)
    blurred[at] = Math.max(0, Math.min(255, blurred[at]! + grain * draw.normal()));
  const quality = Math.round(draw.between(...rules.quality));
  const jpeg = await sharp(blurred, { raw: { width, height, channels: 3 } })
    .jpeg({ quality })
    .toBuffer();
  const data = await sharp(jpeg).ensureAlpha().raw().toBuffer();
  return { width, height, data: new Uint8ClampedArray(data) };
}

/** A mark as a hand sets it: each point off by up to 1.5% of the photo's longer side, any way. */
export function byHand(
  points: readonly Point[],
  { width, height }: { width: number; height: number },
  draw: Chance,
): Point[] {
  const reach = 0.015 * Math.max(width, height);
  return points.map(({ x, y }) => {
    const away = reach * Math.sqrt(draw.share());
    const angle = draw.between(0, 2 * Math.PI);
    return { x: x + away * Math.cos(angle), y: y + away * Math.sin(angle) };
  });
}
