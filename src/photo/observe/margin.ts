import type { GreyImage } from '../types';
import { boxWhere } from '../where';
import { defineObserver } from './observer';

/** A line along an edge counts as even when so many of its pixels lie within so many steps of 255 of the outermost. */
const evenShare = 0.99;
const evenSteps = 4;
/** A narrower margin is what scaling leaves at an edge; within a smaller rest there is no picture. Own choice. */
const leastMargin = 0.01;
const leastInside = 0.1;
/** JPEG spreads an edge over its block of 8 pixels (ITU-T T.81): a margin may end that many too early. */
export const blur = 7;

/**
 * An even margin: a border laid around a photo, the bars beside one of another shape, or the ground of a cut-out. `where`
 * is what lies inside, and the value the share that does not. A camera's ground is never so even.
 */
export const margin = defineObserver({
  id: 'margin',
  gives: ['margin'],
  measure({ width, height }, { grey }) {
    const inside = insideOf(grey);
    if (inside === null) return [];
    const [across, down] = [width / grey.width, height / grey.height];
    const { left, top, right, bottom } = inside;
    const [insideX, insideY] = [(right - left) * across, (bottom - top) * down];
    const ends = (a: boolean, b: boolean) => (Number(a) + Number(b)) * blur;
    const off = ends(left > 0, right < grey.width) * insideY + ends(top > 0, bottom < grey.height) * insideX;
    return [
      {
        what: 'margin',
        value: 1 - (insideX * insideY) / (width * height),
        uncertainty: off / (width * height),
        unit: 'share',
        where: boxWhere(left * across, top * down, right * across, bottom * down),
      },
    ];
  },
});

export interface Inside {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** What lies inside the even margins; null where there is none, or nothing inside. Bars may lie on two sides alone. */
export function insideOf(grey: GreyImage): Inside | null {
  const { width, height } = grey;
  const row = (y: number) => lineOf(grey, y * width, 1, width);
  const top = evenLines(height, row);
  const bottom = height - evenLines(height, (y) => row(height - 1 - y));
  if (bottom - top < leastInside * height) return null;
  const column = (x: number) => lineOf(grey, top * width + x, width, bottom - top);
  const left = evenLines(width, column);
  const right = width - evenLines(width, (x) => column(width - 1 - x));
  if (right - left < leastInside * width) return null;
  return right - left === width && bottom - top === height ? null : { left, top, right, bottom };
}

interface Line {
  mean: number;
  /** The share of its pixels that lie near a value. */
  near: (value: number) => number;
}

function lineOf({ data }: GreyImage, from: number, step: number, length: number): Line {
  let sum = 0;
  for (let at = 0; at < length; at++) sum += data[from + at * step]!;
  return {
    mean: sum / length,
    near(value) {
      let count = 0;
      for (let at = 0; at < length; at++) if (Math.abs(data[from + at * step]! - value) <= evenSteps) count++;
      return count / length;
    },
  };
}

/** How many lines from the edge on are as even as the first, and all of one brightness; 0 where they are too few. */
function evenLines(all: number, line: (at: number) => Line): number {
  const { mean } = line(0);
  let count = 0;
  while (count < all && line(count).near(mean) >= evenShare) count++;
  return count >= leastMargin * all ? count : 0;
}
