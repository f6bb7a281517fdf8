import { addDays, isoDate, isoWeekSpan, type Span } from '../span';

/**
 * Sunday to Saturday of a week counted from the first full such week of the year; null when the year has no such
 * week. Source: 49 CFR 574.5(b)(4), text from memory, not verified.
 */
export function fullSundayWeekSpan(year: number, week: number): Span | null {
  const newYear = isoDate(year, 1, 1);
  const weekday = new Date(`${newYear}T00:00:00Z`).getUTCDay();
  const from = addDays(newYear, ((7 - weekday) % 7) + (week - 1) * 7);
  if (week < 1 || from.slice(0, 4) !== isoDate(year, 1, 1).slice(0, 4)) return null;
  return { from, to: addDays(from, 6), precision: 'week' };
}

export const weekSpan = (year: number, week: number, count: string | undefined): Span | null =>
  count === 'first-full-sunday' ? fullSundayWeekSpan(year, week) : isoWeekSpan(year, week);
