import type { Point } from '../photo';

/** The point that lies a share of the way from one to another; the share may be beyond either. */
export const between = (from: Point, to: Point, share: number): Point => ({
  x: from.x + (to.x - from.x) * share,
  y: from.y + (to.y - from.y) * share,
});
