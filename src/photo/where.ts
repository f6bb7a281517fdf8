import type { Where } from './observation-types';

/** A place in other units: pixels into shares of the photo's sides, or back. */
export const scaledWhere = <W extends Where>(where: W, across: number, down: number): W =>
  ({ ...where, points: where.points.map(({ x, y }) => ({ x: x * across, y: y * down })) }) as W;

/** The upright rectangle between two places, in the units that they are told in. */
export const boxWhere = (
  left: number,
  top: number,
  right: number,
  bottom: number,
): Extract<Where, { form: 'quad' }> => ({
  form: 'quad',
  points: [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ],
});
