import { mean } from '../mean';
import { median } from '../median';
import { type Folded, foldRow } from './fold';
import type { Strip } from './strip';

/** A folded row, and the brightness of what lies beside it. */
export type Grounded = Folded & { ground: number };

export const grounded = (strip: Strip, fold: Folded): Grounded => ({ ...fold, ground: groundOf(strip, fold) });

/** The shape of what is drawn again and again in a row, all laid over each other. */
export interface Shape {
  /** Standard deviations of the drawing the long way and the other, pixels. */
  long: number;
  short: number;
  /** Degrees by which the long way leaves the row's, clockwise positive, −90 to 90. */
  leans: number;
  /** The same of its middle alone, between the holes. */
  slant: number;
}

/** Rows to either side in which a thread is looked at, as a share of the pitch: one that leaves the row by 45° stays inside. */
const beside = 0.6;
/** Share of a drawing's height over the ground from which a sample counts as drawn. */
const leastHigh = 0.4;

/** The thread of a row that is parted at its holes; null where it has the ground's own tone and only its holes are seen. */
export const threadOf = (strip: Strip, fold: Folded): Shape | null => drawnAt(strip, fold, 0);

/**
 * The least length of a thread in its widths, its greatest width and the greatest width of a hole, of which `blurred`
 * pixels are the camera's, and how far a thread may leave the row's way: letters stand across it, and the motifs of a
 * border are as wide as they are long. Found on drawn rows, lines of letters and borders.
 */
const limits = { long: 1.4, wide: 0.12, hole: 0.1, blurred: 0.5, leans: 60 };

/** Whether what is drawn along a row that is parted at its holes has the shape of a thread, or of holes where no thread is seen. */
export function isSewn(strip: Strip, fold: Folded): boolean {
  const thread = threadOf(strip, fold);
  const widest = (share: number): number => share * fold.pitch + limits.blurred;
  if (thread !== null)
    return (
      unblurred(thread.long) >= limits.long * unblurred(thread.short) &&
      thread.short <= widest(limits.wide) &&
      Math.abs(thread.leans) <= limits.leans
    );
  const hole = drawnAt(strip, fold, 0.5);
  return hole !== null && hole.long <= widest(limits.hole);
}

/** A standard deviation without what the camera's blur added to it: variances add up, so short threads lose their shape first. */
const unblurred = (deviation: number): number => Math.sqrt(Math.max(0, deviation ** 2 - limits.blurred ** 2));

/** What is drawn in the middle of the stitches, or so many pitches on; null where something else stands out more. */
function drawnAt(strip: Strip, fold: Folded, on: number): Shape | null {
  const reach = Math.min(strip.aside, fold.pitch * beside);
  const starts = fold.starts.map((start) => start + on * fold.pitch);
  const { columns, rows, common, means } = foldRow(strip, starts, reach);
  const ground = groundOf(strip, fold);
  const stands = common.map((value, at) => value + means[Math.floor(at / columns)]! - ground);
  const highest = stands.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const height = Array.from({ length: rows }, (_, row) =>
    mean([...stands.subarray(row * columns + columns / 2 - 2, row * columns + columns / 2 + 2)]),
  ).reduce((most, value) => (Math.abs(value) > Math.abs(most) ? value : most));
  if (Math.abs(height) < highest * leastHigh) return null;
  const [along, across] = [fold.pitch / columns, (2 * reach) / (rows - 1)];
  const places = Array.from(stands, (value, at) => ({
    x: ((at % columns) + 0.5) * along,
    y: Math.floor(at / columns) * across,
    weight: Math.max(0, value / height - leastHigh),
  }));
  const between = places.filter((_, at) => Math.abs((at % columns) - columns / 2 + 0.5) < columns / 4);
  const { xx, xy, yy } = spreadOf(places);
  const apart = Math.hypot(xx - yy, 2 * xy);
  const middle = spreadOf(between);
  return {
    long: Math.sqrt((xx + yy + apart) / 2),
    short: Math.sqrt(Math.max(0, xx + yy - apart) / 2),
    leans: degrees(0.5 * Math.atan2(2 * xy, xx - yy)),
    slant: degrees(Math.atan2(middle.xy, middle.xx)),
  };
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Variances along and across, and what they have in common, of what is drawn by weights. */
function spreadOf(places: readonly { x: number; y: number; weight: number }[]) {
  const whole = places.reduce((sum, { weight }) => sum + weight, 0);
  const over = (of: (place: (typeof places)[0]) => number): number =>
    places.reduce((sum, place) => sum + place.weight * of(place), 0) / whole;
  const [mx, my] = [over(({ x }) => x), over(({ y }) => y)];
  return {
    xx: over(({ x }) => (x - mx) ** 2),
    yy: over(({ y }) => (y - my) ** 2),
    xy: over(({ x, y }) => (x - mx) * (y - my)),
  };
}

/**
 * Where in a cell the thread's middle lies, 0 to 1: of what is lighter than the ground and what is darker, the longer;
 * a hole may be blacker than any thread is white, and is shorter; in a dark thread it is what is darker still.
 */
export function threadMiddle(strip: Strip, fold: Grounded): number {
  const own = foldRow(strip, fold.starts, Math.max(1, fold.pitch * 0.12));
  const { ground } = fold;
  const leaves = new Float64Array(own.columns);
  for (let column = 0; column < own.columns; column++) {
    let sum = 0;
    for (let row = 0; row < own.rows; row++) sum += own.common[row * own.columns + column]! + own.means[row]! - ground;
    leaves[column] = sum / own.rows;
  }
  const most = leaves.reduce((high, value) => Math.max(high, Math.abs(value)), 0);
  const parts = [1, -1].map((sign) => {
    const part = leaves.map((value) => Math.max(0, sign * value));
    const high = Math.max(...part);
    return { part, long: high < most * 0.2 ? 0 : part.filter((value) => value > high * 0.4).length };
  });
  const [lighter, darker] = parts as [(typeof parts)[0], (typeof parts)[0]];
  const thread = lighter.long >= darker.long ? lighter : darker;
  const hole = thread === darker ? holeIn(darker.part) : null;
  if (hole !== null) return middleOf(hole) + 0.5;
  // One part alone that is short is holes in a thread of the ground's own tone.
  const holes = Math.min(lighter.long, darker.long) === 0 && thread.long / own.columns < 0.3;
  return middleOf(thread.part) + (holes ? 0.5 : 0);
}

/** A hole that is darker than a dark thread: what rises above a level that most of a stitch has, and is short. Null without. */
function holeIn(dark: Float64Array): Float64Array | null {
  const level = median(dark);
  if (level < Math.max(...dark) * 0.35) return null;
  const above = dark.map((value) => Math.max(0, value - level * 1.15));
  const long = above.filter((value) => value > 0).length / dark.length;
  return long > 0 && long < 0.45 ? above : null;
}

/** Where the middle of what stands in a cell lies, as a share of it; the cell is taken as a circle. */
function middleOf(part: Float64Array): number {
  let [c, s] = [0, 0];
  part.forEach((value, column) => {
    c += value * Math.cos((2 * Math.PI * (column + 0.5)) / part.length);
    s += value * Math.sin((2 * Math.PI * (column + 0.5)) / part.length);
  });
  return Math.atan2(s, c) / (2 * Math.PI);
}

/** Brightness of what lies beside the row, on both sides. */
function groundOf(strip: Strip, { pitch }: Folded): number {
  const values: number[] = [];
  const [near, far] = [Math.round(pitch * 0.45), Math.min(strip.aside, Math.round(pitch * 0.8))];
  for (let row = near; row <= far; row++) {
    for (let column = strip.before; column < strip.width - strip.before; column += 3) {
      values.push(strip.data[(strip.aside + row) * strip.width + column]!);
      values.push(strip.data[(strip.aside - row) * strip.width + column]!);
    }
  }
  return median(values);
}
