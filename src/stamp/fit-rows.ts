import { type GreyImage, type Quad, quadSize, release, warpQuad } from '../photo';
import { growQuad } from './crop';

/** Rows in which a line and the ground above and below it are looked at, and that ground in heights of the line. */
const rows = 72;
const ground = 0.5;
const tall = rows / (1 + 2 * ground);
/** Least and largest height that is fitted, in heights of the box as it is. */
const lowest = 0.6;
const highest = 1.45;
/** Ground that is left at least, in rows: without any there is nothing that characters stand out from. */
const leastGround = 4;
/** Edges stronger than those of this share are counted no higher: a rivet's glint is no row of characters. */
const cappedFrom = 0.97;

/**
 * Where a line's characters begin and end from top to bottom, in heights of its quad from its upper side: the rows that
 * differ most, in upright edges, from those above and below them. Rules and seams along the line have none. The split is
 * the one of the largest variance between what is inside and outside. Source: N. Otsu, "A threshold selection method from
 * gray-level histograms", 1979. Null for a flat quad and even ground.
 */
export function fitRows(grey: GreyImage, quad: Quad): { top: number; bottom: number } | null {
  const { across, down } = quadSize(quad);
  if (across < 2 || down < 2) return null;
  const crop = warpQuad(grey, growQuad(quad, 0, ground), Math.max(16, Math.round((across / down) * tall)), rows);
  if (crop === null) return null;
  const sums = [0];
  for (const strength of edgesOfRows(crop)) sums.push(sums.at(-1)! + strength);
  release(crop.data);
  const whole = sums[rows]!;
  let best: { top: number; bottom: number } | null = null;
  let widest = 0;
  for (let from = 0; from < rows; from++) {
    const last = Math.min(rows, from + Math.round(tall * highest));
    for (let to = from + Math.round(tall * lowest); to <= last; to++) {
      const inside = to - from;
      if (rows - inside < leastGround) continue;
      const held = sums[to]! - sums[from]!;
      const apart = held / inside - (whole - held) / (rows - inside);
      const between = apart > 0 ? inside * (rows - inside) * apart ** 2 : 0;
      if (between <= widest) continue;
      widest = between;
      best = { top: from / tall - ground, bottom: to / tall - ground };
    }
  }
  return best;
}

/** How much each row changes from left to right. */
function edgesOfRows({ width, height, data }: GreyImage): number[] {
  const edges = new Uint8Array(width * height);
  const counts = new Uint32Array(256);
  for (let row = 0; row < height; row++) {
    for (let column = 1; column < width - 1; column++) {
      const at = row * width + column;
      edges[at] = Math.abs(data[at + 1]! - data[at - 1]!);
      counts[edges[at]!]!++;
    }
  }
  let cap = 0;
  for (let below = counts[0]!; below < cappedFrom * height * (width - 2) && cap < 255; ) below += counts[++cap]!;
  return Array.from({ length: height }, (_, row) => {
    let sum = 0;
    for (let column = 1; column < width - 1; column++) sum += Math.min(cap, edges[row * width + column]!);
    return sum;
  });
}
