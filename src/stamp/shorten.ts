import type { Lattice, StampLine } from './types';

/**
 * A line with its numbers to four digits. The nets compute with seven, of which JSON writes seventeen: most of what a saved
 * look takes on the disk, and below anything that a reading can be told by. It is done where a line is first told, so
 * that what is shown, what is kept and what is read from it again are the same.
 */
export function shorten(line: StampLine): StampLine {
  const [a, b, c, d] = line.quad;
  const { otherWay } = line;
  return {
    ...line,
    quad: [place(a), place(b), place(c), place(d)],
    stampScore: nearest(line.stampScore),
    lattice: ofLattice(line.lattice),
    free: { ...line.free, probability: nearest(line.free.probability) },
    measurements: line.measurements.map((one) => ({
      ...one,
      value: nearest(one.value),
      uncertainty: nearest(one.uncertainty),
    })),
    ...(otherWay ? { otherWay: ofLattice(otherWay) } : {}),
  };
}

/** Probabilities are cut and not rounded: those of a step never come to more than 1. */
const ofLattice = ({ steps }: Lattice): Lattice => ({
  steps: steps.map((step) => Object.fromEntries(Object.entries(step).map(([text, value]) => [text, below(value)]))),
});

const digits = 4;
const nearest = (value: number): number => Number(value.toPrecision(digits));
function below(value: number): number {
  const near = nearest(value);
  if (near <= value) return near;
  const unit = 10 ** (Math.floor(Math.log10(value)) + 1 - digits);
  return Math.max(0, nearest(near - unit));
}
/** Hundredths of a pixel. */
const place = ({ x, y }: StampLine['quad'][number]) => ({ x: Math.round(x * 100) / 100, y: Math.round(y * 100) / 100 });
