import type { Stitches } from './count';
import { cellAt, likeness } from './fold';
import { threadOf } from './thread';

interface Value {
  value: number;
  uncertainty: number;
}

/**
 * How far stitches lie from where an even row would have them: the standard deviation, as a share of the pitch. Each is
 * moved along until it is most like what all have in common.
 */
export function evennessOf({ strip, fold, pitch }: Stitches): Value {
  const none = new Float64Array(fold.rows);
  const places = fold.starts.slice(0, -1).map((start, at) => ({ start, end: fold.starts[at + 1]! }));
  const cellBy = (place: number, by: number): Float64Array => {
    const { start, end } = places[place]!;
    return cellAt(strip, start + by * pitch, end + by * pitch, fold.reach, fold.rows, none);
  };
  const steps = Array.from({ length: 25 }, (_, step) => (step - 12) / 48);
  let common = fold.common;
  let moved: number[] = [];
  // What they have in common is sharper once each lies where it is most like it.
  for (let round = 0; round < 3; round++) {
    moved = places.map((_, place) => {
      const alike = steps.map((by) => likeness(cellBy(place, by), common));
      return steps[alike.indexOf(Math.max(...alike))]!;
    });
    const cells = moved.map((by, place) => cellBy(place, by));
    common = common.map((_, at) => cells.reduce((sum, cell) => sum + cell[at]!, 0) / cells.length);
  }
  const mean = moved.reduce((sum, by) => sum + by, 0) / moved.length;
  const value = Math.sqrt(moved.reduce((sum, by) => sum + (by - mean) ** 2, 0) / Math.max(1, moved.length - 1));
  return { value, uncertainty: 1.96 * (value / Math.sqrt(2 * moved.length) + 0.006 + 0.15 / pitch) };
}

/** Degrees by which threads leave the row's way, clockwise positive; null where they have the ground's own tone. */
export function slantOf({ fold, pitch, strip }: Stitches): Value | null {
  const thread = threadOf(strip, fold);
  return thread && { value: thread.slant, uncertainty: 7 + 50 / pitch };
}
