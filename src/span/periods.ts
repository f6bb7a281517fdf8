import { addDays, isoDate } from './calendar';
import type { Span } from './types';

/** Whole years from `first` to `last`, both included; `null` is an open end. */
export const yearsSpan = (first: number | null, last: number | null): Span => ({
  from: first === null ? null : isoDate(first, 1, 1),
  to: last === null ? null : isoDate(last, 12, 31),
  precision: first !== null && first === last ? 'year' : 'range',
});

/** An ISO day and every day after it. */
export const sinceSpan = (day: string): Span => ({ from: day, to: null, precision: 'range' });

const [firstDay, lastDay] = ['0001-01-01', '9999-12-31'];

/** Moves a day by whole days; it stays within the years 1 and 9999. */
function moved(day: string, days: number): string {
  const at = addDays(day, days);
  return at < firstDay ? firstDay : at.length > lastDay.length || at > lastDay ? lastDay : at;
}

/** Moves the ends of a span outwards by whole days; open ends stay open. The result is no longer "about". */
export function widenSpan(span: Span, { before, after }: { before: number; after: number }): Span {
  if (before === 0 && after === 0) return { from: span.from, to: span.to, precision: span.precision };
  return {
    from: span.from === null ? null : moved(span.from, -before),
    to: span.to === null ? null : moved(span.to, after),
    precision: 'range',
  };
}
