import type { GreyImage, Point, Quad } from '../../types';
import { type Strip, stripAlong } from '../stitch/strip';

/** A panel whose sides went to the straight edges that they were marked near. */
export interface Snapped {
  quad: Quad;
  /** For each side, from the top clockwise: half-width within which it lies in 95 of 100 cases, pixels. */
  within: [number, number, number, number];
  /** Whether each side found its edge. */
  found: [boolean, boolean, boolean, boolean];
}

interface Side {
  from: Point;
  to: Point;
  within: number;
  found: boolean;
}

/** How many times stronger an edge must stand than lines beside it usually do. Found on drawn panels. */
const leastStanding = 1.5;
/**
 * A second line so many pixels off that stands nearly as strong leaves open which is the side: its own edge may lie
 * beyond the photo, and a row of the print beside it. Found on drawn panels.
 */
const leastApart = 3.5;
const nearlyAsStrong = 0.8;

/** Moves each side of a marked panel to the edge near it, and the corners to where the sides then meet. */
export function snapQuad(grey: GreyImage, quad: Quad, within: number): Snapped {
  const sides = quad.map((from, at) => snapSide(grey, from, quad[(at + 1) % 4]!, within));
  const corners = sides.map((side, at) => meet(sides[(at + 3) % 4]!, side));
  const moved = corners.map((corner, at) => {
    const marked = quad[at]!;
    return corner !== null && Math.hypot(corner.x - marked.x, corner.y - marked.y) <= within * 3 ? corner : marked;
  });
  return {
    quad: moved as unknown as Quad,
    within: sides.map((side) => side.within) as unknown as Snapped['within'],
    found: sides.map((side) => side.found) as unknown as Snapped['found'],
  };
}

function snapSide(grey: GreyImage, from: Point, to: Point, within: number): Side {
  const stays: Side = { from, to, within: within * 0.6, found: false };
  const reach = within * 1.1 + 1;
  const strip = stripAlong(grey, from, to, 0, reach + 6);
  if (strip === null || strip.length < 40) return stays;
  const steps = stepsOf(strip);
  const { parts, rows } = steps;
  const most = Math.floor(reach);
  const ranked: { first: number; last: number; worth: number }[] = [];
  for (let first = -most; first <= most; first++) {
    for (let last = -most; last <= most; last++) {
      let worth = 0;
      for (let part = 0; part < parts; part++) {
        const row = Math.round(strip.aside + first + ((last - first) * (part + 0.5)) / parts);
        worth += Math.sqrt(Math.abs(steps.at[part * rows + row]!));
      }
      ranked.push({
        first,
        last,
        worth: (worth / parts) * (1 - (0.08 * (Math.abs(first) + Math.abs(last))) / (2 * reach)),
      });
    }
  }
  ranked.sort((a, b) => b.worth - a.worth);
  const best = ranked[0]!;
  const rival = ranked.find(({ first, last }) => Math.abs(first + last - best.first - best.last) > 2 * leastApart);
  if (rival && rival.worth > nearlyAsStrong * best.worth) return stays;
  const usual = ranked[ranked.length >> 1]!.worth;
  if (best.worth < leastStanding * usual || best.worth < 1) return stays;
  const fitted = fitLine(strip, steps, best);
  if (fitted === null) return stays;
  const { first, last, off } = fitted;
  return { from: strip.place(0, first), to: strip.place(strip.length, last), within: off, found: true };
}

interface Steps {
  parts: number;
  rows: number;
  /** Brightness below a row less that above it, for each part of the side and each row of the strip. */
  at: Float64Array;
}

function stepsOf(strip: Strip): Steps {
  const parts = Math.max(8, Math.min(60, Math.floor(strip.length / 7)));
  const rows = strip.height;
  const at = new Float64Array(parts * rows);
  // The corners' own surroundings tell nothing of a side.
  const [start, end] = [strip.length * 0.03, strip.length * 0.97];
  for (let part = 0; part < parts; part++) {
    const from = Math.round(start + ((end - start) * part) / parts);
    const to = Math.max(from + 1, Math.round(start + ((end - start) * (part + 1)) / parts));
    const mean = new Float64Array(rows);
    for (let row = 0; row < rows; row++) {
      for (let column = from; column < to; column++)
        mean[row]! += strip.data[row * strip.width + strip.before + column]!;
      mean[row]! /= to - from;
    }
    for (let row = 2; row < rows - 3; row++)
      at[part * rows + row] =
        (mean[row + 1]! + mean[row + 2]! + mean[row + 3]! - mean[row]! - mean[row - 1]! - mean[row - 2]!) / 3;
  }
  return { parts, rows, at };
}

/** The line through the edge's own places near a first one, by least squares that let go of what lies far off. */
function fitLine(strip: Strip, { parts, rows, at }: Steps, near: { first: number; last: number }) {
  const places: { x: number; y: number; weight: number }[] = [];
  for (let part = 0; part < parts; part++) {
    const x = 0.03 + (0.94 * (part + 0.5)) / parts;
    const middle = Math.round(strip.aside + near.first + (near.last - near.first) * x);
    let best = middle;
    for (let row = middle - 3; row <= middle + 3; row++)
      if (Math.abs(at[part * rows + row] ?? 0) > Math.abs(at[part * rows + best] ?? 0)) best = row;
    const [low, here, high] = [-1, 0, 1].map((by) => Math.abs(at[part * rows + best + by] ?? 0)) as [
      number,
      number,
      number,
    ];
    const bend = low - 2 * here + high;
    const by = bend < 0 ? Math.max(-0.5, Math.min(0.5, (low - high) / (2 * bend))) : 0;
    if (here > 1) places.push({ x, y: best + by + 0.5 - strip.aside, weight: Math.sqrt(here) });
  }
  if (places.length < parts * 0.4 || places.length < 6) return null;
  let line = { base: near.first, slope: near.last - near.first };
  let scale = 2;
  for (let round = 0; round < 6; round++) {
    let [w, wx, wy, wxx, wxy] = [0, 0, 0, 0, 0];
    const off = places.map(({ x, y }) => y - line.base - line.slope * x);
    places.forEach(({ x, y, weight }, place) => {
      const own = weight / (1 + (off[place]! / scale) ** 2);
      w += own;
      wx += own * x;
      wy += own * y;
      wxx += own * x * x;
      wxy += own * x * y;
    });
    const bottom = w * wxx - wx * wx;
    if (bottom <= 0) return null;
    const slope = (w * wxy - wx * wy) / bottom;
    line = { base: (wy - slope * wx) / w, slope };
    const sizes = off.map(Math.abs).sort((a, b) => a - b);
    scale = Math.max(0.3, 1.5 * sizes[sizes.length >> 1]!);
  }
  const off = 0.5 + (1.96 * scale * 1.6) / Math.sqrt(places.length);
  return { first: line.base, last: line.base + line.slope, off };
}

function meet(one: Side, other: Side): Point | null {
  const [ax, ay] = [one.to.x - one.from.x, one.to.y - one.from.y];
  const [bx, by] = [other.to.x - other.from.x, other.to.y - other.from.y];
  const across = ax * by - ay * bx;
  if (Math.abs(across) < 1e-6 * Math.hypot(ax, ay) * Math.hypot(bx, by)) return null;
  const share = ((other.from.x - one.from.x) * by - (other.from.y - one.from.y) * bx) / across;
  return { x: one.from.x + ax * share, y: one.from.y + ay * share };
}
