import { varianceOf } from '../../variance';
import { mean } from '../mean';
import { type Folded, foldRow, rowsOf } from './fold';
import type { Strip } from './strip';

/**
 * How much of the repeat goes on beside the row, against in it: cloth repeats everywhere, a row of stitches does not.
 * `otherwise` where the strip has no place beside it.
 */
export function besideOf(strip: Strip, fold: Folded, otherwise: number): number {
  const wide = Math.min(strip.aside, fold.pitch * 2.4);
  const all = foldRow(strip, fold.starts, wide);
  const rows = rowsOf(wide);
  const away = (row: number): number => Math.abs((row / (rows - 1)) * 2 - 1) * wide;
  let [own, far, farRows] = [0, 0, 0];
  for (let row = 0; row < rows; row++) {
    let swing = 0;
    for (let at = row * all.columns; at < (row + 1) * all.columns; at++) swing += all.common[at]! ** 2;
    if (away(row) <= fold.pitch * 0.6) own = Math.max(own, swing);
    else if (away(row) > fold.pitch * 0.9) {
      far += swing;
      farRows++;
    }
  }
  return own > 0 && farRows > 0 ? far / farRows / own : otherwise;
}

/**
 * How much brightness changes along the rows beside the stitches, against along their own: letters reach as far across a
 * row as they are apart, and differ; a thread is narrow.
 */
export function unrestBeside(strip: Strip, { starts, pitch }: Folded): number {
  const [from, to] = [starts[0]!, starts.at(-1)!].map((at) => Math.max(0, Math.min(strip.width, Math.round(at))));
  const unrest = (near: number, far: number): number => {
    const rows = Array.from({ length: strip.height }, (_, row) => row).filter((row) => {
      const away = Math.abs(row - strip.aside) / pitch;
      return away >= near && away < far;
    });
    return mean(rows.map((row) => varianceOf(strip.data.subarray(row * strip.width + from!, row * strip.width + to!))));
  };
  return unrest(0.5, 0.9) / unrest(0, 0.3);
}
