import { once } from '../measure/once';
import type { GreyImage } from '../types';
import { sampleGrey } from '../warp';
import { samplesIn, side } from './written';

/** The part of a photo that another one shows, in shares of its sides. */
export interface Part {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** That two photos are one. */
export interface SamePhoto {
  mirrored: boolean;
  /** Whether one of them shows less than the other. */
  cut: boolean;
}

const coarse = 8;
const scales = [1, 0.94, 0.88, 0.82, 0.76];
const parts: readonly Part[] = scales.flatMap((scale) => {
  const room = Math.round((1 - scale) / 0.06);
  const at = Array.from({ length: room + 1 }, (_, step) => (room === 0 ? 0 : ((1 - scale) * step) / room));
  return at.flatMap((top) => at.map((left) => ({ left, top, width: scale, height: scale })));
});

/** A likeness: its samples, and coarse every part of it, the whole first. */
interface Side {
  samples: GreyImage;
  coarse: Float64Array[];
}
/** What a photo is held against others by, made once for each. */
export interface Prepared {
  plain: Side;
  mirrored(): Side;
  /** By how much more alike the two must be. */
  more: number;
}

/** `more`: by how much another photo may seem more alike than it is, of a likeness that was made of little. */
export function prepared(likeness: string, more = 0): Prepared {
  const samples = { width: side, height: side, data: samplesIn(likeness) };
  return { plain: sideOf(samples), mirrored: once(() => sideOf(mirror(samples))), more };
}

const sideOf = (samples: GreyImage): Side => ({
  samples,
  coarse: parts.map((part) => normal(cut(samples, part, coarse))),
});

const mirror = (samples: GreyImage): GreyImage => ({
  ...samples,
  data: samples.data.map((_, at) => samples.data[at - (at % side) + (side - 1 - (at % side))]!),
});

function normal(values: Float64Array): Float64Array {
  let mean = 0;
  for (const value of values) mean += value;
  mean /= values.length;
  let length = 0;
  for (let at = 0; at < values.length; at++) {
    values[at]! -= mean;
    length += values[at]! ** 2;
  }
  length = Math.sqrt(length) || 1;
  for (let at = 0; at < values.length; at++) values[at]! /= length;
  return values;
}

const product = (one: Float64Array, other: Float64Array): number => {
  let sum = 0;
  for (let at = 0; at < one.length; at++) sum += one[at]! * other[at]!;
  return sum;
};

/** A part of a likeness as `size` × `size` samples: the mean where they are wider apart than its own, between them else. */
function cut(samples: GreyImage, { left, top, width, height }: Part, size: number): Float64Array {
  const out = new Float64Array(size * size);
  const per = Math.max(1, Math.round((side * Math.max(width, height)) / size));
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      let sum = 0;
      for (let v = 0; v < per; v++)
        for (let u = 0; u < per; u++)
          sum += sampleGrey(
            samples,
            side * (left + (width * (x + (u + 0.5) / per)) / size),
            side * (top + (height * (y + (v + 0.5) / per)) / size),
          );
      out[y * size + x] = sum / per ** 2;
    }
  }
  return out;
}

const fine = 20;
const leastCoarse = 0.93;
/** Less than this after the first steps never becomes one photo. */
const leastAtFirst = 0.9;
/**
 * From where on two photos are one: as a whole, in what lies beside the mean of its neighbours, and block by block there,
 * in the least alike tenth of the blocks that show anything. Photos of one piece in one place are alike as a whole, and
 * differ in some block. Found on drawn and on public photographs that differ; docs/figures.md says how many.
 */
const leastAlike = 0.97;
const leastInDetail = 0.98;
const leastInBlock = 0.98;

/** Whether two photos are one, made smaller, packed again, cut by up to a quarter of a side, or mirrored; null where not. */
export function samePhoto(one: Prepared, other: Prepared): SamePhoto | null {
  const more = Math.max(one.more, other.more);
  for (const mirrored of [false, true]) {
    const first = mirrored ? one.mirrored() : one.plain;
    const part = shownPart(first, other.plain, more) ?? shownPart(other.plain, first, more);
    if (part) return { mirrored, cut: part.width * part.height < leastWhole };
  }
  return null;
}
/** What shows less than this share of the other is cut: a border that ends between samples is not. */
const leastWhole = 0.94;

/** Where in `whole` lies what `shown` shows; null where nowhere. */
function shownPart(whole: Side, shown: Side, more: number): Part | null {
  const target = shown.coarse[0]!;
  const likely = whole.coarse
    .map((values, at) => ({ at, alike: product(values, target) }))
    .filter(({ alike }) => alike >= leastCoarse)
    .sort((a, b) => b.alike - a.alike)
    .slice(0, 2);
  if (likely.length === 0) return null;
  const full = normal(cut(shown.samples, { left: 0, top: 0, width: 1, height: 1 }, fine));
  const shownDetail = detail(full);
  for (const { at } of likely) {
    const { part, alike } = refined(whole.samples, full, parts[at]!);
    if (alike < leastAlike + more) continue;
    const wholeDetail = detail(normal(cut(whole.samples, part, fine)));
    if (likenessIn(wholeDetail, shownDetail, 0, 0, fine).alike < leastInDetail + more) continue;
    if (leastOfBlocks(wholeDetail, shownDetail) >= leastInBlock + more) return part;
  }
  return null;
}

/** How alike a square of two is, and how much it shows. */
function likenessIn(one: Float64Array, other: Float64Array, left: number, top: number, size: number) {
  let [both, own, theirs] = [0, 0, 0];
  for (let y = top; y < top + size; y++) {
    for (let x = left; x < left + size; x++) {
      const at = y * fine + x;
      both += one[at]! * other[at]!;
      own += one[at]! ** 2;
      theirs += other[at]! ** 2;
    }
  }
  return { alike: both / Math.sqrt(own * theirs + 1e-12), shows: Math.max(own, theirs) };
}

const block = 5;

/**
 * The likeness of the least alike tenth of the blocks, of those that show at least a quarter of what blocks show on the
 * average.
 */
function leastOfBlocks(one: Float64Array, other: Float64Array): number {
  const blocks: ReturnType<typeof likenessIn>[] = [];
  for (let top = 0; top < fine; top += block)
    for (let left = 0; left < fine; left += block) blocks.push(likenessIn(one, other, left, top, block));
  const usual = blocks.reduce((sum, { shows }) => sum + shows, 0) / blocks.length;
  const showing = blocks.filter(({ shows }) => shows >= usual / 4).map(({ alike }) => alike);
  showing.sort((a, b) => a - b);
  return showing[Math.floor(showing.length / 10)] ?? -1;
}

/** The part moved and stretched until it is most alike. */
function refined(samples: GreyImage, target: Float64Array, from: Part): { part: Part; alike: number } {
  const judged = (part: Part) => product(normal(cut(samples, part, fine)), target);
  let part = from;
  let alike = judged(part);
  for (let step = 0.03; step > 0.002; step /= 2) {
    if (alike < leastAtFirst && step < 0.02) break;
    for (let round = 0; round < 3; round++) {
      let better = false;
      for (const [l, t, r, b] of moves) {
        const next = sides(part, l * step, t * step, r * step, b * step);
        if (next === null) continue;
        const now = judged(next);
        if (now <= alike) continue;
        [part, alike, better] = [next, now, true];
      }
      if (!better) break;
    }
  }
  return { part, alike };
}

const moves = [
  [1, 0, 0, 0],
  [-1, 0, 0, 0],
  [0, 1, 0, 0],
  [0, -1, 0, 0],
  [0, 0, 1, 0],
  [0, 0, -1, 0],
  [0, 0, 0, 1],
  [0, 0, 0, -1],
  [1, 0, 1, 0],
  [-1, 0, -1, 0],
  [0, 1, 0, 1],
  [0, -1, 0, -1],
] as const;

function sides(part: Part, l: number, t: number, r: number, b: number): Part | null {
  const left = part.left + l;
  const top = part.top + t;
  const right = part.left + part.width + r;
  const bottom = part.top + part.height + b;
  if (left < -0.005 || top < -0.005 || right > 1.005 || bottom > 1.005) return null;
  if (right - left < 0.7 || bottom - top < 0.7) return null;
  return { left, top, width: right - left, height: bottom - top };
}

/** What lies beside the mean of its neighbours, two samples to each side. */
function detail(values: Float64Array): Float64Array {
  const out = new Float64Array(values.length);
  for (let y = 0; y < fine; y++) {
    for (let x = 0; x < fine; x++) {
      let [sum, count] = [0, 0];
      for (let v = Math.max(0, y - 2); v <= Math.min(fine - 1, y + 2); v++)
        for (let u = Math.max(0, x - 2); u <= Math.min(fine - 1, x + 2); u++) {
          sum += values[v * fine + u]!;
          count++;
        }
      out[y * fine + x] = values[y * fine + x]! - sum / count;
    }
  }
  return out;
}
