import type { Ink } from './ink';

/** Where a character stands in its straightened line, pixels from its top left, between pixels. */
export interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Share of full ink at which a stroke ends. */
export const edge = 0.5;
/** Parts of one character lie no further apart than this share of the height, and specks are no wider. */
const [closest, speck] = [0.09, 0.07];

/**
 * The characters of a line from left to right, where it parts into as many as it is said to hold; null where it does not.
 * Parts of one character are joined, at less ink where they part else.
 */
export function charactersIn(ink: Ink, count: number, high: number): Box[] | null {
  for (const level of [edge, 0.35]) {
    const runs = joined(runsOf(profile(ink), level), count, high);
    if (runs.length === count) return runs.map((run) => boxOf(ink, run));
  }
  return null;
}

interface Run {
  from: number;
  to: number;
}

/** The strongest ink of each column: the mean of its two strongest neighbours up and down. */
function profile({ width, height, data }: Ink): Float32Array {
  const out = new Float32Array(width);
  for (let column = 0; column < width; column++) {
    let most = 0;
    for (let row = 1; row < height; row++)
      most = Math.max(most, (data[row * width + column]! + data[(row - 1) * width + column]!) / 2);
    out[column] = most;
  }
  return out;
}

function runsOf(values: Float32Array, level: number): Run[] {
  const runs: Run[] = [];
  let from = -1;
  for (let at = 0; at <= values.length; at++) {
    const is = at < values.length && values[at]! > level;
    if (is && from < 0) from = at;
    if (is || from < 0) continue;
    runs.push({ from: crossing(values, from, level, -1), to: crossing(values, at - 1, level, 1) });
    from = -1;
  }
  return runs;
}

/** Where the value falls to the level, past a pixel above it: pixels lie in the middle of their places. */
function crossing(values: Float32Array, at: number, level: number, way: 1 | -1): number {
  const [inside, outside] = [values[at]!, values[at + way] ?? 0];
  const share = inside > outside ? Math.min(1, (inside - level) / (inside - outside)) : 0;
  return at + 0.5 + way * share;
}

function joined(found: readonly Run[], count: number, high: number): Run[] {
  const runs = [...found];
  while (runs.length > count) {
    const gaps = runs.slice(1).map((run, at) => run.from - runs[at]!.to);
    const least = Math.min(...gaps);
    const at = gaps.indexOf(least);
    if (least < closest * high) {
      runs.splice(at, 2, { from: runs[at]!.from, to: runs[at + 1]!.to });
      continue;
    }
    const small = runs.findIndex(({ from, to }) => to - from < speck * high);
    if (small < 0) return runs;
    runs.splice(small, 1);
  }
  return runs;
}

function boxOf({ width, height, data }: Ink, { from, to }: Run): Box {
  const rows = new Float32Array(height);
  for (let row = 0; row < height; row++) {
    for (let column = Math.max(1, Math.floor(from)); column < Math.min(width, Math.ceil(to)); column++)
      rows[row] = Math.max(rows[row]!, (data[row * width + column]! + data[row * width + column - 1]!) / 2);
  }
  const inked = [...rows.keys()].filter((row) => rows[row]! > edge);
  const [first, last] = [inked[0] ?? 0, inked.at(-1) ?? height - 1];
  return { left: from, right: to, top: crossing(rows, first, edge, -1), bottom: crossing(rows, last, edge, 1) };
}

export interface Stroke {
  /** Mean width of the strokes, pixels; 0 where there are none. */
  width: number;
  /** What blur had made it wider by, pixels, and the width that it spreads an edge by: a deviation. */
  widened: number;
  blur: number;
}

/** The strokes in boxes: twice their area over their outline. Blur keeps the area and takes of the outline what it takes of the height. */
export function strokeIn({ width, height, data }: Ink, boxes: readonly Box[]): Stroke {
  let [area, outline] = [0, 0];
  const slopes: number[] = [];
  const value = (x: number, y: number): number => Math.min(1, data[y * width + x]!);
  for (const { left, right, top, bottom } of boxes) {
    for (let y = Math.max(1, Math.floor(top) - 2); y < Math.min(height - 1, Math.ceil(bottom) + 2); y++) {
      for (let x = Math.max(1, Math.floor(left) - 2); x < Math.min(width - 1, Math.ceil(right) + 2); x++) {
        area += value(x, y) > 0.08 ? value(x, y) : 0;
        const [across, down] = [(value(x + 1, y) - value(x - 1, y)) / 2, (value(x, y + 1) - value(x, y - 1)) / 2];
        const slope = Math.hypot(across, down);
        if (slope <= 0.04) continue;
        outline += slope;
        slopes.push(slope);
      }
    }
  }
  if (outline === 0) return { width: 0, widened: 0, blur: 0 };
  slopes.sort((a, b) => a - b);
  // The steepest slope of an edge that is spread by a deviation of b is 1/(b·√2π).
  const blur = 1 / (slopes[Math.floor(slopes.length * 0.95)]! * Math.sqrt(2 * Math.PI));
  const seen = (2 * area) / outline;
  let own = seen;
  for (let turn = 0; turn < 30; turn++) own = seen * heightLeft(own, blur);
  return { width: own, widened: seen - own, blur };
}

/** The share of its height that a blurred stroke keeps: erf(w / (2·√2·b)), by Abramowitz and Stegun 7.1.27. */
function heightLeft(width: number, blur: number): number {
  const x = width / (2 * Math.SQRT2 * blur);
  const sum = 1 + 0.278393 * x + 0.230389 * x ** 2 + 0.000972 * x ** 3 + 0.078108 * x ** 4;
  return 1 - 1 / sum ** 4;
}

/** How strongly a character stands out on the average of its strokes, shares of full ink. */
export function strengthIn({ width, data }: Ink, { left, right, top, bottom }: Box): number {
  let [sum, of] = [0, 0];
  for (let y = Math.ceil(top); y < Math.floor(bottom); y++) {
    for (let x = Math.ceil(left); x < Math.floor(right); x++) {
      const value = data[y * width + x]!;
      if (value < edge) continue;
      sum += value;
      of++;
    }
  }
  return of > 0 ? sum / of : 0;
}
