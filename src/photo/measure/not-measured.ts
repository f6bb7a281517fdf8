import type { Where } from '../observation-types';

/** A measure that has no value, and why. */
export const notMeasured = <What extends string, Why extends string>(
  what: What,
  why: Why,
  where: Where | null = null,
) => ({
  what,
  value: null,
  uncertainty: null,
  unit: null,
  where,
  why,
});
