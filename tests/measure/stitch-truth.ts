import type { PixelImage, Point } from '../../src/photo/types';
import { smoothNoise } from './noise';
import { aslant, type Grade, type Paint, photograph } from './photographed';
import { type Chance, chance } from './random';
import { type Sewing, sound, type Thread } from './sewing';

export interface StitchScene {
  image: PixelImage;
  /** From the first hole to the last; without stitches the line that a hand would draw. */
  line: [Point, Point];
  /** Places from hole to hole, also those that were skipped; 0: no stitches. */
  count: number;
  threads: Thread[];
  /** Mean length of a stitch in the photo, pixels. */
  pitch: number;
  ground: string;
}

type Rgb = readonly [number, number, number];
const grounds = ['grain', 'smooth', 'twill', 'canvas', 'print', 'ribs'] as const;

/** A row of 3 to 30 stitches on leather or cloth, or the same place without them. */
export async function stitchScene(
  seed: number,
  grade: Grade,
  stitched: boolean,
  sewing: Sewing = sound,
): Promise<StitchScene> {
  const draw = chance(seed * 7 + (stitched ? 1 : 2));
  const [width, height] = draw.share() < 0.5 ? [720, 540] : [540, 720];
  const view = aslant(width, height, grade, draw);
  const count = draw.whole(3, 30);
  const longest = Math.min(width, height) * 0.72;
  const least = grade === 'clear' ? 7 : grade === 'fair' ? 6 : 5;
  const pitch = Math.min(draw.between(least, 34), longest / count);
  const turn = draw.between(-Math.PI, Math.PI);
  const length = count * pitch;
  const way = { x: Math.cos(turn), y: Math.sin(turn) };
  const middle = {
    x: width / 2 + draw.between(-0.08, 0.08) * width,
    y: height / 2 + draw.between(-0.08, 0.08) * height,
  };
  const start = { x: middle.x - (way.x * length) / 2, y: middle.y - (way.y * length) / 2 };
  const end = { x: middle.x + (way.x * length) / 2, y: middle.y + (way.y * length) / 2 };
  const kind = draw.of(stitched ? grounds.slice(0, 4) : grounds);
  const contrast = { clear: [55, 120], fair: [30, 80], hard: [16, 50] }[grade] as [number, number];
  const base = draw.between(50, 190);
  const tint = [draw.between(0.85, 1.1), draw.between(0.75, 1), draw.between(0.5, 0.95)];
  const cloth = groundOf(kind, base, tint, pitch, draw);
  const threads = stitched ? sewing(count) : [];
  const thread = threadOf(base, draw.between(...contrast), count, threads, pitch, draw);
  const edgeAt = draw.share() < 0.5 ? draw.between(0.9, 2.2) * pitch * (draw.share() < 0.5 ? -1 : 1) : null;
  const paint: Paint = (at) => {
    const [dx, dy] = [at.x - start.x, at.y - start.y];
    const along = dx * way.x + dy * way.y;
    const across = dy * way.x - dx * way.y;
    let colour = cloth(at.x, at.y);
    if (edgeAt !== null) {
      const beyond = (across - edgeAt) * Math.sign(edgeAt);
      if (beyond > 0) colour = scaled(colour, 0.72 + Math.min(0.1, beyond * 0.01));
      else if (beyond > -2) colour = scaled(colour, 1.12);
    }
    return stitched ? thread(along, across, colour) : colour;
  };
  const image = await photograph(view, paint, grade, draw);
  const line: [Point, Point] = [view.seen(start), view.seen(end)];
  const seenLength = Math.hypot(line[1].x - line[0].x, line[1].y - line[0].y);
  return { image, line, count: stitched ? count : 0, threads, pitch: seenLength / count, ground: kind };
}

const scaled = ([r, g, b]: Rgb, by: number): Rgb => [r * by, g * by, b * by];

function groundOf(kind: (typeof grounds)[number], base: number, tint: number[], pitch: number, draw: Chance) {
  const [coarse, fine] = [smoothNoise(draw.whole(1, 1e6)), smoothNoise(draw.whole(1, 1e6))];
  const size = draw.between(4, 11);
  const depth = draw.between(4, 14);
  const weave = draw.between(0.35, 1.3) * Math.max(6, pitch);
  const lean = draw.between(0, Math.PI);
  const [cos, sin] = [Math.cos(lean), Math.sin(lean)];
  return (x: number, y: number): Rgb => {
    const [u, v] = [x * cos + y * sin, y * cos - x * sin];
    let value = base + 5 * coarse(x / 70, y / 70);
    if (kind === 'grain')
      value += depth * (1 - 2 * Math.abs(coarse(x / size, y / size))) + (depth / 2) * fine(x / 3, y / 3);
    else if (kind === 'twill')
      value += depth * Math.sin((2 * Math.PI * (u + v * 0.6)) / weave) + 4 * fine(x / 4, y / 4);
    else if (kind === 'canvas')
      value +=
        depth * (Math.sin((2 * Math.PI * u) / weave) * Math.sin((2 * Math.PI * v) / weave)) + 4 * fine(x / 4, y / 4);
    else if (kind === 'ribs') value += depth * 1.6 * Math.sin((2 * Math.PI * u) / weave) + 3 * fine(x / 4, y / 4);
    else if (kind === 'print') {
      const [a, b] = [u / (weave * 2.2), v / (weave * 2.2)];
      const [p, q] = [a - Math.round(a), b - Math.round(b)];
      if (Math.hypot(p, q) < 0.3 || Math.abs(p * q) > 0.16) value += 40;
      value += 4 * fine(x / 4, y / 4);
    } else value += 2.5 * fine(x / 5, y / 5);
    return [value * tint[0]!, value * tint[1]!, value * tint[2]!];
  };
}

/** Threads as capsules with a round shine, twist, a shadow at their side, and holes at their ends. */
function threadOf(
  base: number,
  contrast: number,
  count: number,
  threads: readonly Thread[],
  pitch: number,
  draw: Chance,
) {
  const bright = base + contrast < 245 && (base < 75 || draw.share() < 0.6);
  const tone = bright ? base + contrast : base - contrast;
  const tint = [draw.between(0.9, 1.1), draw.between(0.85, 1.05), draw.between(0.6, 1.05)];
  const share = draw.between(0.62, 0.92);
  const wide = Math.max(1.3, draw.between(0.16, 0.36) * pitch);
  const lean = Math.tan(draw.share() < 0.5 ? draw.between(-0.5, 0.5) : 0);
  const twist = draw.between(0, 0.16);
  const hole = draw.share() < 0.75 ? draw.between(0.25, 0.6) : 0;
  const shadow = draw.between(0.05, 0.3);
  const loose = draw.between(0.01, 0.05);
  const jitter = Array.from({ length: count + 1 }, () => [
    draw.normal() * loose,
    draw.normal() * loose * 0.6,
    draw.normal() * 0.04,
  ]);
  return (along: number, across: number, ground: Rgb): Rgb => {
    const cell = Math.floor(along / pitch);
    let colour = ground;
    for (const { from, to, left } of threads) {
      if (to < cell - 1 || from > cell + 1) continue;
      const [dx, dy, glow] = jitter[from]!;
      const x = along / pitch - (from + to) / 2 - dx!;
      const middle = (x * lean * pitch) / (to - from) + dy! * pitch;
      const y = across - middle;
      const past = Math.max(0, Math.abs(x) * pitch - ((to - from - 1 + share) * pitch - wide) / 2);
      const away = Math.hypot(past, y);
      const under = Math.hypot(past, y - wide * 0.35);
      if (under < wide * 0.75) colour = scaled(colour, 1 - shadow);
      if (away < wide / 2) {
        const round = Math.sqrt(1 - (away / (wide / 2)) ** 2);
        const twisted = 1 + twist * Math.sin((x * pitch * 2 * Math.PI) / (wide * 0.9) + (y / wide) * 4);
        const value = tone * (0.78 + 0.24 * round) * twisted * (1 + glow!);
        colour = colour.map((part, channel) => part + (value * tint[channel]! - part) * left) as unknown as Rgb;
      }
    }
    if (hole > 0) {
      const near = Math.round(along / pitch);
      const isCovered = threads.some(({ from, to }) => from < near && near < to);
      if (near >= 0 && near <= count && !isCovered) {
        const away = Math.hypot(along - near * pitch, across);
        if (away < wide * 0.42) colour = scaled(colour, 1 - hole);
      }
    }
    return colour;
  };
}
