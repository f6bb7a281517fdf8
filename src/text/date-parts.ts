import { daySpan, daysInMonth, isoDate, type Span } from '../span';

export interface DateHints {
  /** BCP 47 tag of the text, null when unknown. */
  language: string | null;
  /** Day of reading, ISO 8601; resolves "yesterday", two-digit years and dates without a year. */
  now: string;
}

/** How a date was written; a bare year may be something else (a model, a number), a relative one depends on `now`. */
export type DateForm =
  | 'day'
  | 'month'
  | 'year'
  | 'short-year'
  | 'decade'
  | 'era'
  | 'age'
  | 'relative'
  | 'without-year'
  | 'ago'
  | 'range';

/** A date in folded text, before its words are cut out. */
export interface RawDate {
  span: Span;
  start: number;
  end: number;
  form: DateForm;
  ambiguous?: Span[];
}

/** A two-digit year: not after next year, else a century earlier. */
export const fullYear = (short: number, now: string): number => {
  const current = Number(now.slice(0, 4));
  const century = current - (current % 100);
  return century + short <= current + 1 ? century + short : century - 100 + short;
};

/** The years that two digits may mean in a whole date; one that is soon to come ("18.10.30") may be either century's. */
export const fullYears = (short: number, now: string): number[] => {
  const past = fullYear(short, now);
  return past + 100 <= Number(now.slice(0, 4)) + 10 ? [past + 100, past] : [past];
};

/** A calendar day, or null when there is none. */
export function dayOf(year: number, month: number, day: number): Span | null {
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return null;
  return daySpan(isoDate(year, month, day));
}
