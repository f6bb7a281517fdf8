import { addDays, daysInMonth, isoDate } from './calendar';
import type { Span } from './types';

export type DecadePart = 'early' | 'mid' | 'late';
export type Season = 'spring' | 'summer' | 'autumn' | 'winter';

/** Years of a decade that "early", "mid" and "late" name. Common practice, no source. */
const partYears: Record<DecadePart, readonly [number, number]> = { early: [0, 3], mid: [4, 6], late: [7, 9] };

/** The ten years that begin with `firstYear` (1990 for "the 1990s"), or the early, mid or late part of them. */
export function decadeSpan(firstYear: number, part?: DecadePart): Span {
  const [first, last] = part ? partYears[part] : [0, 9];
  return {
    from: isoDate(firstYear + first, 1, 1),
    to: isoDate(firstYear + last, 12, 31),
    precision: part ? 'range' : 'decade',
  };
}

/** The early, mid or late part of one year: four months each. Common practice, no source. */
export function yearPartSpan(year: number, part: DecadePart): Span {
  const first = { early: 1, mid: 5, late: 9 }[part];
  return {
    from: isoDate(year, first, 1),
    to: isoDate(year, first + 3, daysInMonth(year, first + 3)),
    precision: 'range',
  };
}

/**
 * A season of the northern hemisphere in whole months: spring March to May, summer June to August, autumn September
 * to November, winter December to February of the next year. Source: the meteorological seasons, common practice.
 */
export function seasonSpan(year: number, season: Season): Span {
  if (season === 'winter') {
    return { from: isoDate(year, 12, 1), to: isoDate(year + 1, 2, daysInMonth(year + 1, 2)), precision: 'season' };
  }
  const first = { spring: 3, summer: 6, autumn: 9 }[season];
  return {
    from: isoDate(year, first, 1),
    to: isoDate(year, first + 2, daysInMonth(year, first + 2)),
    precision: 'season',
  };
}

/**
 * The months in which pieces of a trade season are made and sold: spring and summer of a year from September before
 * to August, autumn and winter from March to February after. Common practice, no source.
 */
export function collectionSpan(year: number, season: 'spring-summer' | 'autumn-winter'): Span {
  return season === 'spring-summer'
    ? { from: isoDate(year - 1, 9, 1), to: isoDate(year, 8, 31), precision: 'season' }
    : { from: isoDate(year, 3, 1), to: isoDate(year + 1, 2, daysInMonth(year + 1, 2)), precision: 'season' };
}

/** Whole years from `first` to `last`, both included; `null` is an open end. */
export const yearsSpan = (first: number | null, last: number | null): Span => ({
  from: first === null ? null : isoDate(first, 1, 1),
  to: last === null ? null : isoDate(last, 12, 31),
  precision: first !== null && first === last ? 'year' : 'range',
});

/** Every day before an ISO day. */
export const beforeSpan = (day: string): Span => ({ from: null, to: addDays(day, -1), precision: 'range' });

/** An ISO day and every day after it. */
export const sinceSpan = (day: string): Span => ({ from: day, to: null, precision: 'range' });

/** Moves a day by whole years; 29 February becomes 28 February in common years. Years are kept within 1 and 9999. */
function shiftYears(day: string, years: number): string {
  const year = Math.min(9999, Math.max(1, Number(day.slice(0, 4)) + years));
  const month = Number(day.slice(5, 7));
  return isoDate(year, month, Math.min(Number(day.slice(8)), daysInMonth(year, month)));
}

/** Moves both ends of a span outwards by whole years; open ends stay open. The result is no longer "about". */
export function widenSpan(span: Span, years: number): Span {
  if (years === 0) return { from: span.from, to: span.to, precision: span.precision };
  return {
    from: span.from === null ? null : shiftYears(span.from, -years),
    to: span.to === null ? null : shiftYears(span.to, years),
    precision: 'range',
  };
}
