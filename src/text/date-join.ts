import type { Span } from '../span';
import type { RawDate } from './date-parts';
import { aboutWords, afterWords, beforeWords, rangeWords, untilWords } from './date-words';
import { anyLanguage } from './each-language';

const edge = '(?<![\\p{L}\\d])';
const article =
  "(?:[- ](?:the|year|le|el|dem|den|der|das|die|jahre?|l'annee|annee|annees|anno|anni|ano|anos|los|las|gli|il|het|jaar|jaren|in|en|aus)){0,2}";
const about = new RegExp(`${edge}(?:${anyLanguage(aboutWords)})${article}[\\s-]{0,2}$`, 'u');
const before = new RegExp(`${edge}(?:${anyLanguage(beforeWords)})${article}[\\s-]{1,2}$|${edge}pre$`, 'u');
const until = new RegExp(`${edge}(?:${anyLanguage(untilWords)})${article}[\\s-]{1,2}$`, 'u');
const after = new RegExp(`${edge}(?:${anyLanguage(afterWords)})${article}[\\s-]{1,2}$`, 'u');
const joint = new RegExp(
  `^\\s{0,2}(?:[-–—/~〜]|${anyLanguage(rangeWords)})(?:\\s(?:the|die|den|der|les|le|los|el|gli|il|het|de|in|early|late|mid))?\\s{0,2}$`,
  'u',
);
const shortEnd = /^\s?[-–/]\s?'?(\d\d)(?![\d/-]|[.,]\d|\s?(?:cm|mm|x|€|\$|£|%|s\b|er\b))/;
const aboutAfter = /^(?:ish(?![\p{L}])|\s?(?:頃|ごろ|ころ|前後)|\s?\(?(?:approx|circa|or so|est)\.?\)?(?![\p{L}]))/u;
const openBefore = /^\s?(?:以前|より前|まで)|^\s(?:or|and) (?:earlier|before|older)/u;
const openAfter = /^\s?(?:以降|以後|より後|から)|^\s(?:or|and) (?:later|after|newer)|^\+/u;

const yearLike = (date: RawDate) => ['year', 'short-year', 'decade', 'month'].includes(date.form);

/** One span over both ends: "1988 to 1994", "late 80s/early 90s". */
function joined(first: RawDate, second: RawDate): RawDate {
  const span: Span = { from: first.span.from, to: second.span.to, precision: 'range' };
  return { span, start: first.start, end: second.end, form: 'range' };
}

const shortDecade = /^\s?[-–/]\s?'?(\d0)(?!\d|s\b|er)/;

/** "années 70/80": the second decade in short. */
function withShortDecade(text: string, date: RawDate): RawDate {
  const match = date.form === 'decade' ? shortDecade.exec(text.slice(date.end, date.end + 6)) : null;
  const first = Number(date.span.from?.slice(0, 4));
  if (!match || date.span.precision !== 'decade') return date;
  const last = first - (first % 100) + Number(match[1]) + 9;
  if (last <= first + 9 || last > first + 40) return date;
  const span: Span = { from: date.span.from, to: `${last}-12-31`, precision: 'range' };
  return { span, start: date.start, end: date.end + match[0].length, form: 'range' };
}

/** "1988-94": the second year in short. */
function withShortEnd(text: string, date: RawDate): RawDate {
  const match = date.form === 'year' ? shortEnd.exec(text.slice(date.end, date.end + 8)) : null;
  if (!match) return date;
  const first = Number(date.span.from?.slice(0, 4));
  const last = first - (first % 100) + Number(match[1]);
  if (last <= first || last - first > 40) return date;
  return {
    span: { from: date.span.from, to: `${last}-12-31`, precision: 'range' },
    start: date.start,
    end: date.end + match[0].length,
    form: 'range',
  };
}

function joinRanges(text: string, dates: RawDate[]): RawDate[] {
  const result: RawDate[] = [];
  for (const date of dates) {
    const last = result.at(-1);
    // "1988–'94": the second year is part of the first already.
    if (last && date.start < last.end) continue;
    const between = last ? text.slice(last.end, date.start) : '';
    const ordered = last?.span.from != null && date.span.to !== null && last.span.from <= date.span.to;
    if (
      last &&
      ordered &&
      yearLike(last) &&
      yearLike(date) &&
      between.length <= 12 &&
      joint.test(between) &&
      last.span.from !== date.span.from
    )
      result[result.length - 1] = joined(last, date);
    else result.push(date);
  }
  return result;
}

/** What stands around a date: "circa", "before", "after", "1994ish", "昭和60年頃", "1980年以前". */
function withSurroundings(text: string, date: RawDate): RawDate {
  if (date.form === 'relative' || date.form === 'without-year' || date.form === 'age') return date;
  const left = text.slice(Math.max(0, date.start - 28), date.start);
  const right = text.slice(date.end, date.end + 16);
  const coarse = date.form !== 'day';
  const hedge = coarse ? about.exec(left) : null;
  const hedgeAfter = coarse ? aboutAfter.exec(right) : null;
  let { span, start, end } = date;
  if (hedge || hedgeAfter) {
    span = { ...span, about: true };
    start = hedge ? start - (left.length - hedge.index) : start;
    end += hedgeAfter ? hedgeAfter[0].length : 0;
  }
  const later = coarse ? after.exec(left) : null;
  // "Not before 1990" holds the word for earlier inside the one for later.
  const first = (found: RegExpExecArray | null) => (found && later && later.index <= found.index ? null : found);
  // "Before 3 April 1994" is not that day.
  const exclusive = first(before.exec(left));
  const earlier = exclusive ?? first(coarse ? until.exec(left) : null);
  const [earlierAfter, laterAfter] = [openBefore.exec(right), openAfter.exec(right)];
  if (earlier || earlierAfter) {
    const limit = exclusive ? span.from : span.to;
    const to = exclusive && limit ? dayBefore(limit) : limit;
    span = { ...span, from: null, to, precision: 'range' };
  } else if (later || laterAfter) span = { ...span, to: null, precision: 'range' };
  const opening = earlier ?? later;
  if (opening) start = Math.min(start, date.start - (left.length - opening.index));
  end += earlierAfter?.[0].length ?? laterAfter?.[0].length ?? 0;
  return { ...date, span, start, end };
}

const dayBefore = (day: string) => new Date(Date.parse(`${day}T00:00:00Z`) - 86_400_000).toISOString().slice(0, 10);

/** Joins ranges and takes in the words around each date. `dates` are sorted and do not overlap. */
export function joinDates(text: string, dates: RawDate[]): RawDate[] {
  return joinRanges(
    text,
    dates.map((date) => withShortDecade(text, withShortEnd(text, date))),
  ).map((date) => withSurroundings(text, date));
}
