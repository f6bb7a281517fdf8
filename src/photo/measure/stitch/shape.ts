import type { Stitches } from './count';
import { cellAt, likeness } from './fold';

interface Value {
  value: number;
  uncertainty: number;
}

/**
 * How far stitches lie from where an even row would have them: the standard deviation, as a share of the pitch. Each is
 * moved along until it is most like what all have in common.
 */
export function evennessOf({ strip, fold, pitch }: Stitches): Value {
  const reach = Math.min(strip.aside, pitch * 0.75);
  const none = new Float64Array(fold.rows);
  const steps = 12;
  const moved = fold.starts.slice(0, -1).map((start, at) => {
    const end = fold.starts[at + 1]!;
    const alike = Array.from({ length: 2 * steps + 1 }, (_, step) => {
      const by = ((step - steps) / steps) * pitch * 0.25;
      return likeness(cellAt(strip, start + by, end + by, reach, fold.rows, none), fold.common);
    });
    const best = alike.indexOf(Math.max(...alike));
    return ((best - steps) / steps) * 0.25;
  });
  const mean = moved.reduce((sum, by) => sum + by, 0) / moved.length;
  const value = Math.sqrt(moved.reduce((sum, by) => sum + (by - mean) ** 2, 0) / Math.max(1, moved.length - 1));
  return { value, uncertainty: 1.96 * (value / Math.sqrt(2 * moved.length) + 0.006 + 0.15 / pitch) };
}

/** Degrees by which threads leave the row's way, clockwise positive; from how the drawing's middle wanders along a stitch. */
export function slantOf({ fold, pitch, strip }: Stitches): Value {
  const reach = Math.min(strip.aside, pitch * 0.75);
  const { columns, rows, common } = fold;
  let [xx, xy, yy] = [0, 0, 0];
  const across = (2 * reach) / (rows - 1);
  const along = pitch / columns;
  for (let row = 1; row < rows - 1; row++) {
    for (let column = 1; column < columns - 1; column++) {
      const at = row * columns + column;
      const gx = (common[at + 1]! - common[at - 1]!) / along;
      const gy = (common[at + columns]! - common[at - columns]!) / across;
      xx += gx * gx;
      xy += gx * gy;
      yy += gy * gy;
    }
  }
  // The way along which brightness changes least.
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy) + Math.PI / 2;
  const value = (((angle * 180) / Math.PI + 90 + 360) % 180) - 90;
  return { value, uncertainty: 6 + 40 / pitch };
}
