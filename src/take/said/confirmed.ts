import type { Layout, Slot } from '../../maker/types';
import { blank, type DateUnit, digitWays, interleaved, readsExamples, shapeOf, slotOf } from './layout';

type Run = { letters: boolean; length: number };

/** More units than a code writes: of such a muddle nothing is tried. */
const mostUnits = 3;

function orders<T>(of: readonly T[]): T[][] {
  if (of.length < 2) return [[...of]];
  return of.flatMap((one, at) => orders(of.filter((_, other) => other !== at)).map((rest) => [one, ...rest]));
}

/** How examples look, where all look alike. */
function runsOf(examples: readonly { code: string }[]): Run[] | null {
  const shapes = examples.map(({ code }) =>
    shapeOf(code).map(({ letters, text }): Run => ({ letters, length: text.length })),
  );
  const [first] = shapes;
  return first && shapes.every((other) => JSON.stringify(other) === JSON.stringify(first)) ? first : null;
}

/** Runs of a code, where digits beside its letters, or at an end of it, may be a workshop's as well. */
function withWorkshops(runs: readonly Run[]): Run[][] {
  const letters = runs.some((run) => run.letters);
  const more = runs.flatMap((run, at) => {
    if (run.letters || run.length < 4) return [];
    const [before, behind] = [runs[at - 1], runs[at + 1]];
    return [1, 2].flatMap((over) => {
      const rest = { letters: false, length: run.length - over };
      const ahead = { letters: true, length: over + (before?.length ?? 0) };
      const after = { letters: true, length: over + (behind?.length ?? 0) };
      const joined = [];
      if (before || !letters) joined.push([...runs.slice(0, Math.max(0, at - 1)), ahead, rest, ...runs.slice(at + 1)]);
      if (behind || !letters) joined.push([...runs.slice(0, at), rest, after, ...runs.slice(at + 2)]);
      return joined;
    });
  });
  return [[...runs], ...more];
}

/** The ways in which runs of digits write units in this order: all in one run, or one in each. */
function waysOf(runs: readonly Run[], units: readonly DateUnit[]): Slot[][] {
  const digits = runs.filter(({ letters }) => !letters);
  const slotsOf = (each: readonly Slot[][]): Slot[] => {
    let next = 0;
    return runs.flatMap(({ letters, length }) => (letters ? [{ plant: length }] : each[next++]!));
  };
  if (digits.length === 1) {
    const length = digits[0]!.length;
    const mixed = units.length === 2 && length === 4 ? [interleaved(units[0]!, units[1]!)] : [];
    return [...digitWays(units, length), ...mixed].map((slots) => slotsOf([slots]));
  }
  if (digits.length !== units.length) return [];
  const each = units.map((unit, at) => slotOf(unit, digits[at]!.length));
  return each.every((slot): slot is Slot => slot !== null) ? [slotsOf(each.map((slot) => [slot]))] : [];
}

/**
 * The one layout of the units that a text names, in whatever order, that reads all its examples as it says; null where none
 * does, or several do. A workshop may be a number where the text names one (`ofPlant`).
 */
export function confirmedLayout(
  examples: readonly { code: string; reads: string }[],
  units: readonly DateUnit[],
  ofPlant: boolean,
): Layout | null {
  const runs = runsOf(examples);
  if (!runs || units.length === 0 || units.length > mostUnits || runs.filter(({ letters }) => letters).length > 1)
    return null;
  const parted = examples.some(({ code }) => /[ -]/.test(code));
  const between: Slot = examples.some(({ code }) => /[/.]/.test(code)) ? { separator: ' -/.', optional: true } : blank;
  const shapes = ofPlant ? withWorkshops(runs) : [runs];
  for (const shape of shapes) {
    const fitting = orders(units)
      .flatMap((order) => waysOf(shape, order))
      .map((slots) => (parted ? slots.flatMap((slot, at) => (at > 0 ? [between, slot] : [slot])) : slots))
      .filter((layout) => readsExamples(layout, examples));
    const [only, ...others] = new Map(fitting.map((layout) => [JSON.stringify(layout), layout])).values();
    if (only) return others.length === 0 ? only : null;
  }
  return null;
}
