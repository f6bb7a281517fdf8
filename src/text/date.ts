import { addDays, daySpan, monthSpan, type Span, yearSpan } from '../span';
import { agesIn } from './age';
import { japaneseDates } from './date-japanese';
import { joinDates } from './date-join';
import { numericDates } from './date-numeric';
import { type DateForm, type DateHints, dayOf, fullYear, fullYears, type RawDate } from './date-parts';
import { relativeDates } from './date-relative';
import { monthPattern, months, weekdayPattern } from './date-words';
import { decadesIn } from './decade';
import { withoutEnd } from './ends';
import { type Folded, foldWords, sourceRange } from './fold';

export type { DateForm, DateHints } from './date-parts';

export interface FoundDate {
  span: Span;
  start: number;
  end: number;
  /** `text.slice(start, end)`. */
  words: string;
  form: DateForm;
  /** Every way to read the characters, `span` among them, when there are several. */
  ambiguous?: Span[];
}

const year = '((?:1[6-9]|20|21)\\d\\d)';
const day = '(\\d{1,2})';
const ordinal = '(?:st|nd|rd|th|er|º|°|\\.)?';
const of = '(?:\\s?(?:of|de|del|di|van|,|-|\\.|/)?\\s{0,2})';
const name = `\\[?(${monthPattern})\\]?\\.?`;
const edge = '(?<![\\p{L}\\d])';
const weekday = `(?:(?:${weekdayPattern})\\.?,?\\s{1,2})?`;
const dayMonthYear = new RegExp(
  `${edge}(?<!\\d[.,/])${weekday}${day}${ordinal}${of}${name}${of},?(?:${year}|'?(\\d\\d)(?![\\d:.h]))(?!\\d)`,
  'gu',
);
const monthDayYear = new RegExp(
  `${edge}${weekday}${name}\\s{0,2}${day}(?:st|nd|rd|th)?(?:,\\s{0,2}|\\s{1,2}|\\s{0,2},?\\s)${year}(?!\\d)`,
  'gu',
);
const monthYear = new RegExp(`${edge}${name}(?:\\s?(?:of|de|del|di|van|,|-|/|')?\\s{0,2})${year}(?!\\d)`, 'gu');
const dayMonth = new RegExp(
  `${edge}${day}${ordinal}(?:\\s(?:of|de|di)\\s|\\s{1,2}|\\.\\s?)(${monthPattern})(?![\\p{L}])\\.?(?!\\s{0,3}\\d{4})`,
  'gu',
);
const monthDay = new RegExp(
  `${edge}(${monthPattern})\\.?\\s${day}(?:st|nd|rd|th)?(?![\\d.:/,h]|\\s?(?:cm|mm|in|x|am|pm))(?!,?\\s{1,2}\\d{2,4})`,
  'gu',
);

const monthOf = (text: string | undefined) => months.get(text ?? '') ?? 0;

function namedDates(text: string, now: string): RawDate[] {
  const found: RawDate[] = [];
  const add = (match: RegExpMatchArray, span: Span | null, form: DateForm) => {
    if (span) found.push({ span, start: match.index!, end: match.index! + withoutEnd(match[0], /[\s,]/).length, form });
  };
  for (const match of text.matchAll(dayMonthYear)) {
    const years = match[3] ? [Number(match[3])] : fullYears(Number(match[4]), now);
    const spans = years.flatMap((written) => dayOf(written, monthOf(match[2]), Number(match[1])) ?? []);
    add(match, spans[0] ?? null, 'day');
    if (spans.length > 1) found[found.length - 1]!.ambiguous = spans;
  }
  for (const match of text.matchAll(monthDayYear))
    add(match, dayOf(Number(match[3]), monthOf(match[1]), Number(match[2])), 'day');
  for (const match of text.matchAll(monthYear)) add(match, monthSpan(Number(match[2]), monthOf(match[1])), 'month');
  for (const match of text.matchAll(dayMonth))
    add(match, lastPast(monthOf(match[2]), Number(match[1]), now), 'without-year');
  for (const match of text.matchAll(monthDay))
    add(match, lastPast(monthOf(match[1]), Number(match[2]), now), 'without-year');
  return found;
}

/** The last such day up to `now`: what a page means by a date without a year. */
export function lastPast(month: number, dayNumber: number, now: string): Span | null {
  const current = Number(now.slice(0, 4));
  for (let back = 0; back <= 8; back += 1) {
    const span = dayOf(current - back, month, dayNumber);
    if (span && (span.from as string) <= now.slice(0, 10)) return span;
  }
  return null;
}

const isoDay = /(?<![\p{L}\d.,/-])(\d{4})[-./](\d{1,2})[-./](\d{1,2})(?![\d])/gu;
const isoMonth = /(?<![\p{L}\d.,/-])((?:19|20)\d\d)[-/](0[1-9]|1[0-2])(?![\d/-])/gu;
const monthSlashYear = /(?<![\p{L}\d.,/-])(0?[1-9]|1[0-2])[/.-]((?:19|20)\d\d)(?![\d/-])/gu;
const bareYear =
  /(?<![\p{L}\d#№$€£¥]|(?<!\d{3})\d[.,'/-]|[$€£¥#]\s)((?:1[7-9]|20)\d\d)(?!\d|(?!ish)\p{L}|[.,'][\d]|\s?(?:€|\$|£|¥|%|円|元|euros?|eur|usd|gbp|chf|kr|pounds|dollars|mm|cm|g|kg|km|ml|reviews|ratings|sales|followers)(?![\p{L}])|\s?x\s?\d)/gu;
const yearJapanese = /(?<!\d)((?:19|20)\d\d)年(?!代)/gu;
const shortYear = /(?<![\p{L}\d'])'(\d\d)(?![\d'"s]|\s?er|\s?(?:cm|mm|in|inch))/gu;

const timeAndOffset = /^[t\s](\d{2}):(\d{2})(?::\d{2}(?:\.\d{1,9})?)?\s?([+-])(\d{2}):?(\d{2})/u;

/** The day in UTC of a day with a time and an offset behind it, when it is another one. */
function utcDay(span: Span, behind: string): Span | null {
  const match = timeAndOffset.exec(behind);
  if (!match) return null;
  const [, hours, minutes, sign, offsetHours, offsetMinutes] = match;
  const offset = (Number(offsetHours) * 60 + Number(offsetMinutes)) * (sign === '-' ? 1 : -1);
  const total = Number(hours) * 60 + Number(minutes) + offset;
  const days = Math.floor(total / 1440);
  return days === 0 ? null : daySpan(addDays(span.from as string, days));
}

function numericForms(text: string, now: string): RawDate[] {
  const found: RawDate[] = [];
  const add = (match: RegExpMatchArray, span: Span | null, form: DateForm) => {
    if (span) found.push({ span, start: match.index!, end: match.index! + match[0].length, form });
  };
  for (const match of text.matchAll(isoDay)) {
    const span = dayOf(Number(match[1]), Number(match[2]), Number(match[3]));
    const other = span && utcDay(span, text.slice(match.index + match[0].length, match.index + match[0].length + 24));
    add(match, span, 'day');
    if (span && other) found[found.length - 1]!.ambiguous = [span, other];
  }
  for (const match of text.matchAll(isoMonth)) add(match, monthSpan(Number(match[1]), Number(match[2])), 'month');
  for (const match of text.matchAll(monthSlashYear)) add(match, monthSpan(Number(match[2]), Number(match[1])), 'month');
  const latest = Number(now.slice(0, 4)) + 1;
  for (const pattern of [bareYear, yearJapanese])
    for (const match of text.matchAll(pattern))
      if (Number(match[1]) <= latest) add(match, yearSpan(Number(match[1])), 'year');
  for (const match of text.matchAll(shortYear)) add(match, yearSpan(fullYear(Number(match[1]), now)), 'short-year');
  return found;
}

/** Leaves out every date whose characters a longer or more exact one holds. Sorted by place. */
function withoutOverlaps(dates: RawDate[]): RawDate[] {
  const ordered = [...dates].sort((a, b) => a.start - b.start || b.end - a.end);
  const kept: RawDate[] = [];
  for (const date of ordered) {
    const last = kept[kept.length - 1];
    if (!last || date.start >= last.end) kept.push(date);
    else if (date.end - date.start > last.end - last.start) kept.splice(-1, 1, date);
  }
  return kept;
}

/**
 * All dates of a text in order: days, months, years, decades, eras, ranges; `span.about` after "circa". "Vintage" alone
 * is no date. Numeric dates whose order the language does not settle carry `ambiguous`.
 */
export function parseDates(text: string, hints: DateHints): FoundDate[] {
  const folded = foldWords(text);
  const raw = [
    ...namedDates(folded.text, hints.now),
    ...numericForms(folded.text, hints.now),
    ...numericDates(folded.text, hints),
    ...japaneseDates(folded.text),
    ...decadesIn(folded.text, hints.now),
    ...agesIn(folded.text, hints.now),
    ...relativeDates(folded.text, hints.now),
  ];
  return joinDates(folded.text, withoutOverlaps(raw)).map((date) => toFound(folded, date));
}

function toFound(folded: Folded, { start, end, ...date }: RawDate): FoundDate {
  return { ...date, ...sourceRange(folded, start, end) };
}
