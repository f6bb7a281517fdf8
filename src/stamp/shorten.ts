import type { Lattice, StampLine } from './types';

/**
 * A line with its numbers to four digits, and of each step what is likely at all. The nets compute with seven digits, of
 * which JSON writes seventeen: most of what a saved look takes on the disk, and below anything that a reading can be told
 * by. It is done where a line is first told, so that what is shown, what is kept and what is read from it again are the same.
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

const ofLattice = ({ steps }: Lattice): Lattice => ({
  steps: steps.map((step) =>
    Object.fromEntries(
      Object.entries(step)
        .filter(([, value]) => value >= negligible)
        .map(([text, value]) => [text, below(value)]),
    ),
  ),
});

/** Lines that are no code hold hundreds of characters less likely than this. A reading through one is never accepted. */
const negligible = 2e-4;
const digits = 4;
/** Of a small probability these decimals, which tell it to a tenth of itself. */
const decimals = 5;
const nearest = (value: number): number => Number(value.toPrecision(digits));
/** Probabilities are cut and not rounded: those of a step never come to more than 1. */
function below(value: number): number {
  const places = Math.min(decimals, digits - 1 - Math.floor(Math.log10(value)));
  const near = Number(value.toFixed(places));
  return near <= value ? near : Number((near - 10 ** -places).toFixed(places));
}
/** Hundredths of a pixel. */
const place = ({ x, y }: StampLine['quad'][number]) => ({ x: Math.round(x * 100) / 100, y: Math.round(y * 100) / 100 });
