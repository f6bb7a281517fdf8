/** Columns and rows of a grid, both ends included. */
export interface Cells {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** The largest rectangle of free points, by the area between them; null when none is free. `xs` and `ys` rise. */
export function largestFree(free: readonly (readonly boolean[])[], xs: readonly number[], ys: readonly number[]) {
  const covered = countCovered(free);
  let best: Cells | null = null;
  let most = -1;
  for (const [top, y] of ys.entries()) {
    for (let bottom = top; bottom < ys.length; bottom++) {
      for (const [left, x] of xs.entries()) {
        for (let right = left; right < xs.length; right++) {
          if (covered(left, top, right, bottom) > 0) break;
          const area = ((xs[right] as number) - x + 1) * ((ys[bottom] as number) - y + 1);
          if (area <= most) continue;
          most = area;
          best = { left, right, top, bottom };
        }
      }
    }
  }
  return best;
}

/** How many points of a rectangle are covered, from sums over all that end at its corners. */
function countCovered(free: readonly (readonly boolean[])[]) {
  const sums: number[][] = [];
  const sum = (row: number, column: number) => sums[row]?.[column] ?? 0;
  for (const [row, points] of free.entries()) {
    sums[row] = [];
    for (const [column, isFree] of points.entries()) {
      (sums[row] as number[])[column] =
        (isFree ? 0 : 1) + sum(row - 1, column) + sum(row, column - 1) - sum(row - 1, column - 1);
    }
  }
  return (left: number, top: number, right: number, bottom: number) =>
    sum(bottom, right) - sum(top - 1, right) - sum(bottom, left - 1) + sum(top - 1, left - 1);
}
