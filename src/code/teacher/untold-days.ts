import type { Reading } from '../types';
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
 * Whether two figures of what counts as a running number may be the day of the month: wherever they stand, they never
 * leave 01 to 31 beside a month, and no known date is a day, which alone could tell.
 */
export function mayBeDays({ eras }: Explanation, facts: readonly Fact[]): boolean {
  if (facts.some(isDayKnown)) return false;
  return eras.some((era) => {
    const explained = facts.filter(({ index }) => era.explains.includes(index));
    const read = explained.flatMap(({ code }) => readingsOf(era, code).slice(0, 1));
    const kinds = new Set(read.flatMap(({ parts }) => parts.map(({ tells }) => tells.kind)));
    if (!kinds.has('month') || kinds.has('day')) return false;
    const places = figuresOf(read);
    return places.some((tens) =>
      places.some((units) => tens !== units && tens.every((figure, at) => isDay(`${figure}${units[at]}`))),
    );
  });
}

/** The figures of the running numbers, place by place, each as the codes have it there; empty text where one has none. */
function figuresOf(read: readonly Reading[]): string[][] {
  const numbers = read.map(numbersOf);
  return (numbers[0] ?? []).flatMap((first, at) =>
    [...first].map((_, place) => numbers.map((own) => own[at]?.[place] ?? '')),
  );
}

const numbersOf = ({ parts }: Reading): string[] =>
  parts.flatMap(({ text, tells }) => (tells.kind === 'serial' ? [text] : []));

const isDay = (text: string): boolean => /^\d{2}$/.test(text) && Number(text) >= 1 && Number(text) <= 31;
