/** L*, a* and b* (CIELAB). */
export type LabColour = readonly [number, number, number];
/** How far two colours are apart to the eye. */
export type ColoursApart = (one: LabColour, other: LabColour) => number;

/** The smallest step of an axis that matters. */
const finest = 0.05;

/**
 * How far a colour is from the nearest of a range. The nearest to the eye is not the nearest by the axes, so that it is
 * sought along them, in ever smaller steps, from there. Work: a few steps of each axis for each halving.
 */
export function apartFromRange(
  lab: LabColour,
  range: readonly [least: number, most: number][],
  apart: ColoursApart,
): number {
  const within = (value: number, axis: number) => {
    const [least = 0, most = 0] = range[axis] ?? [];
    return Math.min(most, Math.max(least, value));
  };
  let nearest: LabColour = [within(lab[0], 0), within(lab[1], 1), within(lab[2], 2)];
  let best = apart(lab, nearest);
  let step = Math.max(...range.map(([least, most]) => most - least)) / 2;
  while (step > finest) {
    const before = best;
    for (const axis of [0, 1, 2])
      for (const by of [-step, step]) {
        const tried = nearest.map((value, at) => (at === axis ? within(value + by, at) : value));
        const other: LabColour = [tried[0] ?? 0, tried[1] ?? 0, tried[2] ?? 0];
        const off = apart(lab, other);
        if (off < best) [nearest, best] = [other, off];
      }
    if (best === before) step /= 2;
  }
  return best;
}
