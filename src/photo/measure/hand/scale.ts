import type { Point, Quad } from '../../types';
import { backOf, project, projectionOnto } from '../../warp';

/**
 * Long and short side of an identification card, mm.
 * Source: ISO/IEC 7810:2019, ID-1.
 */
export const cardMm = { width: 85.6, height: 53.98 } as const;

/** A mark with its points and their half-width in pixels. */
export interface PixelMark {
  points: readonly Point[];
  within: number;
  mm: number | null;
}

/** A length with the half-width that holds in 95 of 100 cases. */
export interface Length {
  value: number;
  uncertainty: number;
}

/** What tells lengths on a photo, in the plane that it lies in. */
export interface Scale {
  /** Length between two points, mm; `within`: how far off these may be, pixels. Null where it cannot be told. */
  between(from: Point, to: Point, within: number): Length | null;
  /** Millimetres a pixel in its middle. */
  atItself: Length;
}

/** The scale of two points and the length between them; it holds for what faces the camera as they do. */
export function scaleOfRuler({ points, within, mm }: PixelMark): Scale | null {
  const [from, to] = points;
  if (from === undefined || to === undefined || mm === null) return null;
  const length = distance(from, to);
  if (length < 8) return null;
  const [value, off] = [mm / length, (Math.SQRT2 * within) / length];
  return {
    atItself: { value, uncertainty: value * off },
    between(a, b, near) {
      const pixels = distance(a, b);
      return { value: pixels * value, uncertainty: value * Math.hypot(pixels * off, Math.SQRT2 * near) };
    },
  };
}

/** The scale of a card of known size, seen from any side; it holds for what lies in the card's plane. */
export function scaleOfCard({ points, within }: PixelMark): Scale | null {
  const middle = {
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  };
  const between = (a: Point, b: Point, near: number) =>
    withOff([...points, a, b], (moved) => lengthByCard(moved.slice(0, 4), moved[4]!, moved[5]!), [
      ...points.map(() => within),
      near,
      near,
    ]);
  const beside = { x: middle.x + 1, y: middle.y };
  const atItself = between(middle, beside, 0);
  return atItself && { between, atItself };
}

/** Millimetres between two points in the plane of a card whose corners are given, as it lies long or upright. */
function lengthByCard(corners: readonly Point[], a: Point, b: Point): number | null {
  const quad = corners as unknown as Quad;
  const { width, height } = isLong(quad) ? cardMm : { width: cardMm.height, height: cardMm.width };
  const projection = projectionOnto(quad, width, height);
  const ground = projection && backOf(projection);
  if (ground === null) return null;
  const [from, to] = [project(ground, a.x, a.y), project(ground, b.x, b.y)];
  const length = distance(from, to);
  return Number.isFinite(length) ? length : null;
}

function isLong([a, b, c, d]: Quad): boolean {
  return distance(a, b) + distance(d, c) >= distance(a, d) + distance(b, c);
}

/**
 * A value of points, and how far it is off when each of these is, to the side on which that tells more: coordinates err by
 * themselves, so their squares add up.
 */
function withOff(
  points: readonly Point[],
  of: (points: readonly Point[]) => number | null,
  within: readonly number[],
): Length | null {
  const value = of(points);
  if (value === null) return null;
  let squares = 0;
  for (const [at, point] of points.entries()) {
    const near = within[at] ?? 0;
    if (near === 0) continue;
    for (const axis of ['x', 'y'] as const) {
      const [more, less] = [near, -near].map((by) =>
        of(points.map((one, index) => (index === at ? { ...point, [axis]: point[axis] + by } : one))),
      );
      if (more == null || less == null) return null;
      squares += Math.max((more - value) ** 2, (less - value) ** 2);
    }
  }
  return { value, uncertainty: Math.sqrt(squares) };
}

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);
