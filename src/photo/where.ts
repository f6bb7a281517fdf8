import type { Where } from './observation-types';

/** A place in other units: pixels into shares of the photo's sides, or back. */
export const scaledWhere = <W extends Where>(where: W, across: number, down: number): W =>
  ({ ...where, points: where.points.map(({ x, y }) => ({ x: x * across, y: y * down })) }) as W;
