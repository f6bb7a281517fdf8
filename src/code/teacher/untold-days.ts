import { readingsOf } from './candidates';
import type { Explanation } from './explain';
import type { Fact } from './facts';

const isDayKnown = ({ stated }: Fact): boolean => stated.spans.some(({ precision }) => precision === 'day');

/** Whether a layout reads a day of the month that no known day of its own codes bears out: any small number looks like one. */
export const isDayUntold = ({ eras }: Explanation, facts: readonly Fact[]): boolean =>
  eras.some(
    ({ layout, explains }) =>
      layout.some((slot) => 'day' in slot) && !facts.some((fact) => explains.includes(fact.index) && isDayKnown(fact)),
  );

/**
 * Whether two figures of what counts as a running number may be the day of the month: they never leave 01 to 31 beside
 * a month, and no known date is a day, which alone could tell.
 */
export function mayBeDays({ eras }: Explanation, facts: readonly Fact[]): boolean {
  if (facts.some(isDayKnown)) return false;
  return eras.some((era) => {
    const explained = facts.filter(({ index }) => era.explains.includes(index));
    const read = explained.flatMap(({ code }) => readingsOf(era, code).slice(0, 1));
    const kinds = new Set(read.flatMap(({ parts }) => parts.map(({ tells }) => tells.kind)));
    if (!kinds.has('month') || kinds.has('day')) return false;
    return (read[0]?.parts ?? []).some(({ text }, at) =>
      [...text].some((_, from) =>
        read.every(({ parts }) => {
          const part = parts[at];
          return part?.tells.kind === 'serial' && isDay(part.text.slice(from, from + 2));
        }),
      ),
    );
  });
}

const isDay = (text: string): boolean => /^\d{2}$/.test(text) && Number(text) >= 1 && Number(text) <= 31;
