import { daysInMonth, isoDate } from './calendar';
import type { Span } from './types';

/** Whole years from `first` to `last`, both included; `null` is an open end. */
export const yearsSpan = (first: number | null, last: number | null): Span => ({
  from: first === null ? null : isoDate(first, 1, 1),
  to: last === null ? null : isoDate(last, 12, 31),
  precision: first !== null && first === last ? 'year' : 'range',
});

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
