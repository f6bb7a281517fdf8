import type { GreyImage } from '../../types';
import { planeOf, powerAbove, spectrumOf } from '../fourier';

/** A step under which a pattern comes to lie on itself, samples of the panel. */
export interface Step {
  x: number;
  y: number;
  /** How alike the pattern then is to itself, −1 to 1. */
  alike: number;
  /** Half-width of the step's length in 95 of 100 cases, as a share of it, as its multiples tell. */
  within: number;
}

export interface Lattice {
  across: Step | null;
  down: Step | null;
  /** Whether every other row stands half a repeat aside. */
  staggered: boolean;
}

/** Likeness of a panel to itself moved by whole samples. */
class Likeness {
  constructor(
    private readonly values: Float64Array,
    private readonly side: number,
    readonly width: number,
    readonly height: number,
  ) {}

  at(x: number, y: number): number {
    const { values, side, width, height } = this;
    const share = ((width - Math.abs(x)) * (height - Math.abs(y))) / (width * height);
    if (share < 0.12) return 0;
    return values[((y + side) % side) * side + ((x + side) % side)]! / values[0]! / share;
  }
}

function likenessOf({ width, height, data }: GreyImage): Likeness {
  const side = powerAbove(Math.max(width, height) * 1.7);
  const plane = new Float64Array(side * side);
  for (let row = 0; row < height; row++) plane.set(data.subarray(row * width, (row + 1) * width), row * side);
  const spectrum = spectrumOf(plane, side, height);
  const { real, imaginary } = spectrum;
  for (let at = 0; at < real.length; at++) real[at] = real[at]! ** 2 + imaginary[at]! ** 2;
  imaginary.fill(0);
  return new Likeness(planeOf(spectrum), side, width, height);
}

/** Least likeness of a repeat, and the share of the best one that a shorter step must reach. Found on drawn patterns. */
const leastAlike = 0.4;
const nearlyAsAlike = 0.88;
const leastStep = 5;
/**
 * Few repeats, or repeats one way only, may be things that happen to be alike: they must be more so. Multiples of a step
 * that part by more than a share of it are none; a weave's part by twice as much, and are many and more alike. Found on drawn
 * patterns, bars at random, photographs of cloth and of number plates.
 */
const few = { repeats: 4, alike: 0.7 };
const fewest = 2;
const leastAlone = 0.6;
const mostParted = 0.01;
const woven = { repeats: 8, alike: 0.75, mostParted: 0.02 };

/** The shortest steps across and down under which a panel's pattern repeats; `seen` is all that is seen of it, where that is more. */
export function latticeOf(image: GreyImage, seen: Pick<GreyImage, 'width' | 'height'> = image): Lattice {
  const alike = likenessOf(image);
  const [across, down] = notAlone(stepOf(alike, true, seen.width), stepOf(alike, false, seen.height));
  let staggered = false;
  if (across !== null && down !== null) {
    const half = near(alike, (across.x + down.x) / 2, (across.y + down.y) / 2, 2);
    staggered = half.alike > 0.75 * Math.min(across.alike, down.alike);
  }
  return { across, down, staggered };
}

function notAlone(across: Step | null, down: Step | null): [Step | null, Step | null] {
  const alone = across === null || down === null ? (across ?? down) : null;
  return alone !== null && alone.alike < leastAlone ? [null, null] : [across, down];
}

function stepOf(alike: Likeness, level: boolean, seen: number): Step | null {
  const side = level ? alike.width : alike.height;
  const most = Math.floor(side * 0.6);
  const value = (along: number, aside: number): number => (level ? alike.at(along, aside) : alike.at(aside, along));
  const best = new Float64Array(most + 2);
  const aside = new Int32Array(most + 2);
  for (let along = 1; along < best.length; along++) {
    const lean = Math.max(1, Math.round(along * 0.07));
    best[along] = -1;
    for (let off = -lean; off <= lean; off++) {
      if (value(along, off) <= best[along]!) continue;
      best[along] = value(along, off);
      aside[along] = off;
    }
  }
  let start = 2;
  while (start < most && best[start]! < best[start - 1]!) start++;
  const peaks: number[] = [];
  for (let along = Math.max(start, leastStep); along <= most; along++)
    if (best[along]! >= best[along - 1]! && best[along]! > best[along + 1]! && best[along]! > leastAlike)
      peaks.push(along);
  const top = Math.max(0, ...peaks.map((along) => best[along]!));
  const first = peaks.find((along) => best[along]! >= nearlyAsAlike * top && dips(best, along));
  if (first === undefined) return null;
  const twice = peaks.some(
    (along) => Math.abs(along - 2 * first) <= Math.max(2, first * 0.12) && best[along]! > 0.4 * best[first]!,
  );
  if (2 * first <= most && !twice) return null;
  if (fewest * first > seen || (few.repeats * first > seen && best[first]! < few.alike)) return null;
  const at = level ? { x: first, y: aside[first]! } : { x: aside[first]!, y: first };
  const step = refined(alike, at, best[first]!, most);
  const isWoven = step.alike >= woven.alike && woven.repeats * first <= seen;
  return step.within > (isWoven ? woven.mostParted : mostParted) ? null : step;
}

/** Whether likeness falls clearly between the panel itself and a step: else it is one slow change. */
function dips(best: Float64Array, along: number): boolean {
  let least = Infinity;
  for (let at = Math.floor(along * 0.2) + 1; at < along; at++) least = Math.min(least, best[at]!);
  return best[along]! - least > 0.12;
}

/** The step by its farthest multiple that is still alike, so that a fraction of a sample is told. */
function refined(alike: Likeness, first: { x: number; y: number }, height: number, most: number): Step {
  let step = near(alike, first.x, first.y, 2);
  const found = [{ x: step.x, y: step.y, times: 1 }];
  for (let times = 2; times < 40; times++) {
    const [x, y] = [step.x * times, step.y * times];
    if (Math.hypot(x, y) > most * 1.15) break;
    const there = near(alike, x, y, 2 + Math.floor(times / 4));
    if (there.alike < 0.45 * height) break;
    found.push({ x: there.x / times, y: there.y / times, times });
    const weight = found.reduce((sum, { times: t }) => sum + t * t, 0);
    step = {
      x: found.reduce((sum, own) => sum + own.x * own.times ** 2, 0) / weight,
      y: found.reduce((sum, own) => sum + own.y * own.times ** 2, 0) / weight,
      alike: step.alike,
    };
  }
  const length = Math.hypot(step.x, step.y);
  const weight = found.reduce((sum, { times }) => sum + times, 0);
  const spread = Math.sqrt(
    found.reduce((sum, { x, y, times }) => sum + times * (Math.hypot(x, y) - length) ** 2, 0) / weight,
  );
  return { ...step, alike: height, within: (2 * spread + 0.35 / found.at(-1)!.times) / length };
}

/** The highest likeness near a step, between samples. */
function near(alike: Likeness, x: number, y: number, reach: number): { x: number; y: number; alike: number } {
  let [bestX, bestY] = [Math.round(x), Math.round(y)];
  const [fromX, fromY] = [bestX, bestY];
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++)
      if (alike.at(fromX + dx, fromY + dy) > alike.at(bestX, bestY)) [bestX, bestY] = [fromX + dx, fromY + dy];
  }
  const here = alike.at(bestX, bestY);
  const between = (low: number, high: number): number => {
    const bend = low - 2 * here + high;
    return bend < 0 ? Math.max(-0.5, Math.min(0.5, (low - high) / (2 * bend))) : 0;
  };
  return {
    x: bestX + between(alike.at(bestX - 1, bestY), alike.at(bestX + 1, bestY)),
    y: bestY + between(alike.at(bestX, bestY - 1), alike.at(bestX, bestY + 1)),
    alike: here,
  };
}
