import type { Layout, Slot } from '../../maker/types';
import type { SaidExample } from './example';
import { type DateUnit, digitSlots, interleaved, readsExamples } from './layout';

/** How a code looks before it is known what its digits write. */
export type Shape = (Slot | { digits: number })[];

/** A layout of some shape whose digits write these units; null where they do not come out even. `odd` are those of the odd and the even places. */
export function fill(shape: Shape, units: readonly DateUnit[], odd: [DateUnit, DateUnit] | null): Layout | null {
  const runs = shape.filter((part) => 'digits' in part);
  if (units.length === 0 || runs.length === 0) return null;
  const slots: Slot[] = [];
  const each = runs.length === units.length && runs.length > 1;
  let at = 0;
  for (const part of shape) {
    if (!('digits' in part)) {
      slots.push(part);
      continue;
    }
    const own = each ? [units[at++]!] : runs.length === 1 ? [...units] : null;
    const written = own && (odd && part.digits === 4 ? interleaved(...odd) : digitSlots(own, part.digits));
    if (!written) return null;
    slots.push(...written);
  }
  return slots;
}

/** The one layout among the usual ones that reads every example as it says; null when several do, or none. */
export function onlyUsual(
  shapes: readonly Shape[],
  examples: readonly SaidExample[],
): { layout: Layout; units: DateUnit[] } | null {
  if (examples.length === 0) return null;
  const weeks = examples.every(({ reads }) => /W/.test(reads));
  const unit: DateUnit = weeks ? 'week' : 'month';
  const tries: [DateUnit[], [DateUnit, DateUnit] | null][] = [
    [[unit, 'year'], null],
    [['year', unit], null],
    [
      [unit, 'year'],
      [unit, 'year'],
    ],
    [
      ['year', unit],
      ['year', unit],
    ],
  ];
  const fitting = shapes.flatMap((shape) =>
    tries.flatMap(([units, odd]) => {
      const layout = fill(shape, units, odd);
      return layout && readsExamples(layout, examples) ? [{ layout, units }] : [];
    }),
  );
  const distinct = new Map(fitting.map((one) => [JSON.stringify(one.layout), one]));
  const [only] = distinct.values();
  return distinct.size === 1 && only ? only : null;
}
