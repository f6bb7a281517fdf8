import { flatten, type GreyImage } from '../photo';
import type { PlacedCharacter } from './align';
import type { Lattice } from './types';

/**
 * How like its mirror image, both ways, a sign is that has the same arms to all sides. Own look at five faces: no 4 came
 * above 0.75, and of a plus nine of ten views lie above it.
 */
const allSides = 0.78;
/** Width in which a character is looked at, in pitches: less than one, so that its neighbours stay out. */
const wide = 0.9;
/** How far a character's middle may be off, in pitches. */
const off = 0.3;

/**
 * Which characters of a line are likelier a plus than the 4 that they were read as: the recogniser knows no signs, and
 * takes each for the character that it looks like most. A plus is the same from every side, as no 4 is. Where grain or
 * glare hides that, nothing is told. `crop` is the line upright with ground on all sides, `middles` are shares of its width.
 */
export function plusSigns(crop: GreyImage, placed: readonly PlacedCharacter[], middles: readonly number[]): number[] {
  if (placed.length < 2 || !placed.some(({ character }) => character === '4')) return [];
  const flat = flatten(crop, Math.max(4, crop.height >> 1), 48, 6);
  const pitch = (middles.at(-1)! - middles[0]!) / (middles.length - 1);
  return placed.flatMap(({ character }, at) => (character === '4' && isPlus(flat, middles[at]!, pitch) ? [at] : []));
}

/** Whether what stands about a middle is its own mirror image, left to right and top to bottom. */
function isPlus(flat: GreyImage, middle: number, pitch: number): boolean {
  const half = Math.floor((pitch * flat.width * wide) / 2);
  const most = Math.ceil(off * pitch * flat.width);
  for (let shift = -most; shift <= most; shift++) {
    const { across, down } = likeness(flat, Math.round(middle * flat.width) + shift, half);
    if (across > allSides && down > allSides) return true;
  }
  return false;
}

/** How like the mirror image: correlation of a window's pixels with those on the other side, about its strokes' middle row. */
function likeness({ width, height, data }: GreyImage, centre: number, half: number): { across: number; down: number } {
  const value = (x: number, y: number): number =>
    x < 0 || y < 0 || x >= width || y >= height ? 0 : data[y * width + x]! - 128;
  let [energy, rows] = [0, 0];
  for (let y = 0; y < height; y++) {
    for (let x = centre - half; x <= centre + half; x++) {
      energy += value(x, y) ** 2;
      rows += value(x, y) ** 2 * y;
    }
  }
  if (energy === 0) return { across: 0, down: 0 };
  const twice = Math.round((2 * rows) / energy);
  let [across, down] = [0, 0];
  for (let y = 0; y < height; y++) {
    for (let x = centre - half; x <= centre + half; x++) {
      across += value(x, y) * value(2 * centre - x, y);
      down += value(x, y) * value(x, twice - y);
    }
  }
  return { across: across / energy, down: down / energy };
}

/** How likely a sign is a character after all: as likely as not. */
const isCharacter = 0.5;

/** The lattice with characters left open: each may as well be none. */
export function withSignsOpen(lattice: Lattice, signs: readonly PlacedCharacter[]): Lattice {
  const steps = [...lattice.steps];
  for (const { character, steps: own } of signs) {
    // Each of several steps alone would make the character: what is left to each is such that none makes it is as likely.
    const kept = 1 - (1 - isCharacter) ** (1 / own.length);
    for (const at of own) {
      const step = steps[at]!;
      const share = step[character] ?? 0;
      steps[at] = { ...step, [character]: share * kept, '': (step[''] ?? 0) + share * (1 - kept) };
    }
  }
  return { steps };
}
