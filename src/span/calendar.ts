import type { Period, Span } from './types';

const pad = (value: number, length: number) => String(value).padStart(length, '0');
const dayMs = 86_400_000;

/** ISO day of a calendar date (month 1 to 12). Years below 1000 are padded to four digits. */
export const isoDate = (year: number, month: number, day: number): string =>
  `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;

/** Days in a month (1 to 12) of the proleptic Gregorian calendar. */
export const daysInMonth = (year: number, month: number): number => {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
};

/** Moves an ISO day by whole days. */
export function addDays(day: string, days: number): string {
  const moved = new Date(Date.parse(`${day}T00:00:00Z`) + days * dayMs);
  return isoDate(moved.getUTCFullYear(), moved.getUTCMonth() + 1, moved.getUTCDate());
}

export const yearSpan = (year: number): Span => ({
  from: isoDate(year, 1, 1),
  to: isoDate(year, 12, 31),
  precision: 'year',
});

export const monthSpan = (year: number, month: number): Span => ({
  from: isoDate(year, month, 1),
  to: isoDate(year, month, daysInMonth(year, month)),
  precision: 'month',
});

/** Quarter 1 to 4. */
export const quarterSpan = (year: number, quarter: number): Span => ({
  from: isoDate(year, quarter * 3 - 2, 1),
  to: isoDate(year, quarter * 3, daysInMonth(year, quarter * 3)),
  precision: 'quarter',
});

export const daySpan = (day: string): Span => ({ from: day, to: day, precision: 'day' });

/** First day (Monday) of an ISO week year's week 1. Source: ISO 8601-1:2019 3.1.1.23. */
function firstMonday(weekYear: number): string {
  const fourth = isoDate(weekYear, 1, 4);
  const weekday = (new Date(`${fourth}T00:00:00Z`).getUTCDay() + 6) % 7;
  return addDays(fourth, -weekday);
}

/** Weeks in an ISO week year: 52, or 53 in long years. */
export const isoWeeksInYear = (weekYear: number): 52 | 53 =>
  addDays(firstMonday(weekYear), 52 * 7) === firstMonday(weekYear + 1) ? 52 : 53;

/** Monday to Sunday of an ISO week; null when the year has no such week. Source: ISO 8601-1:2019. */
export function isoWeekSpan(weekYear: number, week: number): Span | null {
  if (!Number.isInteger(week) || week < 1 || week > isoWeeksInYear(weekYear)) return null;
  const from = addDays(firstMonday(weekYear), (week - 1) * 7);
  return { from, to: addDays(from, 6), precision: 'week' };
}

/** Day 1 to 366 of a year; null when the year has no such day. */
export function dayOfYearSpan(year: number, ordinal: number): Span | null {
  const length = daysInMonth(year, 2) + 337;
  return ordinal >= 1 && ordinal <= length ? daySpan(addDays(isoDate(year, 1, 1), ordinal - 1)) : null;
}

/** Reads `YYYY`, `YYYY-MM` or `YYYY-MM-DD`; null for anything else and for days that do not exist. */
export function partialDateSpan(text: string): Span | null {
  const match = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/.exec(text);
  if (!match) return null;
  const year = Number(match[1]);
  const month = Number(match[2] ?? 1);
  const day = Number(match[3] ?? 1);
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return null;
  if (match[3]) return daySpan(text);
  return match[2] ? monthSpan(year, month) : yearSpan(year);
}

const hedge = 'about ';

/**
 * The span of a `[first, last]` pair of partial dates, `null` and "unknown" meaning open, "about 1994" hedging the whole;
 * null when either does not exist.
 */
export function periodSpan([first, last]: readonly [string | null, string | null]): Span | null {
  const [start, end] = [first, last].map((date): Span | null =>
    date === null || date === 'unknown'
      ? { from: null, to: null, precision: 'range' }
      : partialDateSpan(date.startsWith(hedge) ? date.slice(hedge.length) : date),
  );
  if (!start || !end) return null;
  const about = [first, last].some((date) => date?.startsWith(hedge));
  return { from: start.from, to: end.to, precision: 'range', ...(about ? { about } : {}) };
}

/** One period of a maker file or several, as a list. */
export const listOfPeriods = (used: Period | readonly Period[]): Period[] =>
  typeof used[0] === 'string' ? [used as Period] : [...(used as readonly Period[])];

/** The spans of one or several periods; those that do not exist are left out. */
export const periodSpans = (used: Period | readonly Period[]): Span[] =>
  listOfPeriods(used).flatMap((period) => periodSpan(period) ?? []);

const laterOf = (a: string | null, b: string | null) => (a === null ? b : b === null || a > b ? a : b);
const earlierOf = (a: string | null, b: string | null) => (a === null ? b : b === null || a < b ? a : b);

/** The days that both spans hold; null when they share none. Keeps the finer precision of an unchanged operand. */
export function meetSpans(a: Span, b: Span): Span | null {
  const from = laterOf(a.from, b.from);
  const to = earlierOf(a.to, b.to);
  if (from !== null && to !== null && from > to) return null;
  const same = [a, b].find((span) => span.from === from && span.to === to);
  const met: Span = { from, to, precision: same?.precision ?? 'range' };
  return a.about || b.about ? { ...met, about: true } : met;
}

export const spansMeet = (a: Span, b: Span): boolean => meetSpans(a, b) !== null;

/** Whether every day of `inner` is in `outer`. */
export const spanHolds = (outer: Span, inner: Span): boolean => {
  const met = meetSpans(outer, inner);
  return met !== null && met.from === inner.from && met.to === inner.to;
};

const monthNames = 'January February March April May June July August September October November December'.split(' ');
const monthWords = (day: string) => `${monthNames[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)}`;
const dayWords = (day: string) => `${Number(day.slice(8))} ${monthWords(day)}`;

/** A span in plain words: "January 1995", "1988 to 2003", "before 1980", "about 1994", "week of 4 March 1996". */
export function spanWords(span: Span): string {
  return `${span.about ? 'about ' : ''}${plainWords(span)}`;
}

function plainWords({ from, to, precision }: Span): string {
  if (from === null && to === null) return 'any date';
  if (from === null) return `up to ${endWords(to as string, 'to')}`;
  if (to === null) return `from ${endWords(from, 'from')}`;
  if (precision === 'day' || from === to) return dayWords(from);
  if (precision === 'week') return `the week of ${dayWords(from)}`;
  if (precision === 'month') return monthWords(from);
  if (precision === 'decade' && from.endsWith('0-01-01') && to.endsWith('9-12-31')) return `the ${from.slice(0, 4)}s`;
  const part = from.slice(0, 4) === to.slice(0, 4) && !(from.endsWith('-01-01') && to.endsWith('-12-31'));
  const [first, last] = [endWords(from, 'from', part), endWords(to, 'to', part)];
  return first === last ? first : `${first} to ${last}`;
}

/**
 * An end of a span as coarsely as it can be said: a whole year as its number, a whole month by name. With
 * `partOfYear` the year is not whole ("January 1992 to February 1992").
 */
function endWords(day: string, end: 'from' | 'to', partOfYear = false): string {
  if (!partOfYear && day.endsWith(end === 'from' ? '-01-01' : '-12-31')) return day.slice(0, 4);
  const edge = end === 'from' ? 1 : daysInMonth(Number(day.slice(0, 4)), Number(day.slice(5, 7)));
  return Number(day.slice(8)) === edge ? monthWords(day) : dayWords(day);
}
