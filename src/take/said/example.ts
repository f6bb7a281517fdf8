import { spanReads } from '../../code';
import { isoWeekSpan, quarterSpan } from '../../span';
import { type FoundDate, foldWords, parseDates } from '../../text';
import { wholeWords } from '../words';
import { plainCode } from './code';
import type { DateUnit } from './layout';
import { ordinalOf } from './ordinal-words';

export interface SaidExample {
  code: string;
  /** As a maker file's example writes it. */
  reads: string;
  lookAlike: boolean;
  start: number;
  end: number;
}

/** The units that a date of this form is written with. */
export function unitsOfDate(reads: string): DateUnit[] {
  if (reads.includes('W')) return ['week', 'year'];
  if (reads.includes('Q')) return ['quarter', 'year'];
  return reads.length > 7 ? ['day', 'month', 'year'] : reads.length > 4 ? ['month', 'year'] : ['year'];
}

interface SaidDate {
  reads: string;
  start: number;
  end: number;
}

const weekNames = [...wholeWords('week')].join('|');
const weekOfYear = new RegExp(
  `(?:${weekNames})\\s?(\\d{1,2})(?:[\\s,]{1,2}|\\s?/\\s?)(?:(?:of|von|de|del|di|van|in|im|the|year|jahr|des|jahres|dell'anno|het|jaar|l'annee)\\s){0,2}((?:19|20)\\d\\d)|((?:19|20)\\d\\d)年?の?第?(\\d{1,2})週|(\\d{1,2})(?:st|nd|rd|th|\\.|ª|a|e|eme)?\\s(?:${weekNames})[\\s,]{1,2}(?:(?:of|von|de|del|di|van|in|des|jahres)\\s){0,2}((?:19|20)\\d\\d)`,
  'gu',
);

const small = '(?:(?:of|von|de|del|di|van|in|im|the|year|jahr|des|jahres|het|jaar)\\s|(?:d|l|dell)[\u0027’])';
const weekInWords = new RegExp(
  `(?<!\\p{L})(\\p{L}{4,24}(?:[- ](?:et )?\\p{L}{4,14})?)\\s(?:${weekNames})[\\s,]{1,2}${small}{0,3}((?:19|20)\\d\\d)`,
  'gu',
);

/** "The nineteenth week of 1976", with what else stands before the ordinal left out. */
const weeksInWords = (folded: string): SaidDate[] =>
  [...folded.matchAll(weekInWords)].flatMap((match): SaidDate[] => {
    const words = match[1]!;
    const behind = words.slice(words.lastIndexOf(' ') + 1);
    const week = ordinalOf(words) ?? ordinalOf(behind);
    const span = week === null ? null : isoWeekSpan(Number(match[2]), week);
    return span ? [{ reads: spanReads(span), start: match.index, end: match.index + match[0].length }] : [];
  });

const places = ([1, 2, 3, 4] as const).map((place) => [...wholeWords(`ordinal-${place}`)]);
const ordinals = places.flat().join('|').replace(/\./g, '\\.');
const quarterNames = [...wholeWords('quarter')].join('|');
const quarterOfYear = new RegExp(
  `(?:(${ordinals}|[1-4]|(?<!\\p{L})\\p{L}{4,9})\\s?(?:${quarterNames})|q([1-4]))(?:[\\s,]{1,2}|\\s?/\\s?)(?:(?:of|von|de|del|di|van|in|im|the|year|jahr|des|jahres)\\s){0,2}((?:19|20)\\d\\d)|((?:19|20)\\d\\d)年?の?第?([1-4])四半期`,
  'gu',
);

/** "The third quarter of 1972", "Q3 1972", "zweites Quartal 1969". */
const quarters = (folded: string): SaidDate[] =>
  [...folded.matchAll(quarterOfYear)].flatMap((match) => {
    const quarter = Number(match[2] ?? match[5]) || Number(match[1]) || ordinalOf(match[1]!) || placeNamed(match[1]!);
    const span = quarter >= 1 && quarter <= 4 ? quarterSpan(Number(match[3] ?? match[4]), quarter) : null;
    return span ? [{ reads: spanReads(span), start: match.index, end: match.index + match[0].length }] : [];
  });
const placeNamed = (word: string): number => places.findIndex((words) => words.includes(word)) + 1;

/** Dates as exact as a quarter, month, week or day, with the place of their words. */
export function exactDates(text: string, day: string): SaidDate[] {
  const folded = foldWords(text).text;
  const weeks = [...folded.matchAll(weekOfYear)].flatMap((match): SaidDate[] => {
    const span = isoWeekSpan(Number(match[2] ?? match[3] ?? match[6]), Number(match[1] ?? match[4] ?? match[5]));
    return span ? [{ reads: spanReads(span), start: match.index, end: match.index + match[0].length }] : [];
  });
  const others = parseDates(text, { language: null, now: day })
    .filter(({ form, span }) => (form === 'day' || form === 'month') && !span.about)
    .flatMap((date) => plainDate(date, day));
  const all = [...weeks, ...weeksInWords(folded), ...quarters(folded), ...others].sort(
    (a, b) => a.start - b.start || b.end - a.end,
  );
  let reached = 0;
  return all.filter(({ start, end }) => {
    const free = start >= reached;
    if (free) reached = end;
    return free;
  });
}

/** "voor november 1991" stands behind a code for "of November 1991" as well: no example is dated by an open span. */
function plainDate({ span, start, end, words }: FoundDate, day: string): SaidDate[] {
  if (span.from !== null && span.to !== null) return [{ reads: spanReads(span), start, end }];
  const lead = /^\p{L}{2,12}\s/u.exec(words)?.[0].length ?? 0;
  const [bare] = parseDates(words.slice(lead), { language: null, now: day });
  return lead > 0 && bare?.span.from && bare.span.to ? [{ reads: spanReads(bare.span), start: start + lead, end }] : [];
}

/** Letters and at least three digits, at most one blank, stroke or point between two of its parts; two digits where letters join them. */
const codes =
  /(?<![\p{Script=Latin}\d])(?:\d{1,4}(?<joint>[ ./-]?)\p{Lu}{1,3}\k<joint>\d{1,4}|\p{Lu}{1,3}(?<before>[ ./-])\d{1,2}\k<before>\d{2}|\d{1,2}(?<behind>[ ./-])\d{2}\k<behind>\p{Lu}{1,3}|\p{Lu}{1,3}[ -]\d{1,2}\/\d{1,2}|\d{1,2}\/\d{1,2}[ -]\p{Lu}{1,3}|\p{Lu}\d[ -]\d{3,6}|\p{Lu}{1,3}[ -]?\d{3,8}|\d{3,8}(?:[ -]?\p{Lu}{1,3})?|\p{Lu}{2}\d{2}|\d{2}\p{Lu}{1,2})(?![\p{Script=Latin}\d])/gu;
/** A stroke between the parts of one code joins more than these. */
const nearest = 60;

interface Written {
  text: string;
  start: number;
  end: number;
}

const isYearLike = (code: string): boolean => /^(?:1[6-9]|20)\d\d$/.test(code);
/** "1974 = week 19 of 1974", "1974, c'est la semaine 19": what looks like a year is a code where it is said what it means. */
const saysWhat =
  /^\s?(?:[=＝→]|,?\s?(?:means|stands for|c['’]est|signifie|steht für|heißt|bedeutet|significa|vuol dire|sta per|quiere decir|betekent|staat voor)(?!\p{L}))/u;

/** What may be codes in a text, in order: neither years nor parts of its dates. */
function codesIn(text: string, dates: readonly SaidDate[]): Written[] {
  const wide = text.replace(/[\uff01-\uff5e]/g, (unit) => String.fromCharCode(unit.charCodeAt(0) - 0xfee0));
  let at = 0;
  return [...wide.matchAll(codes)]
    .map((match) => ({ text: match[0], start: match.index, end: match.index + match[0].length }))
    .filter(({ text: code, start }) => {
      while (dates[at] && dates[at]!.end <= start) at += 1;
      const inDate = dates[at] !== undefined && dates[at]!.start <= start;
      const isSaid = !inDate && isYearLike(code) && saysWhat.test(wide.slice(start + 4, start + 24));
      return !inDate && (!isYearLike(code) || isSaid);
    });
}

const ofLetterAndYear = /(?<![\p{L}\d])\p{Lu}\d\d\p{Lu}{0,2}(?![\p{Script=Latin}\d]|[.,]\d)/gu;
/** "C84", "C84T": a letter and two figures are a code only where its date is of a year with these figures. */
const letterAndYearIn = (text: string): Written[] =>
  [...text.matchAll(ofLetterAndYear)].map(({ 0: code, index }) => ({
    text: code,
    start: index,
    end: index + code.length,
  }));
/** "n° 212, février 2014": the issue of a journal, and its date. */
const issueSign = /(?<!\p{L})(?:n[°ºo.]|nr\.?|no\.?|№|vol\.?|heft|issue|núm\.?|num\.?|jrg\.?|第)\s?$/iu;

/** Whether a code is so short that it dates a piece only by a form that is told beside it. */
export const isShortCode = (code: string): boolean => shortYear.test(code);
const shortYear = /^\p{Lu}(\d\d)\p{Lu}{0,2}$/u;

/** The last code that a text shows; null where it shows none. */
export const codeShown = (text: string, day: string): string | null =>
  codesIn(text, exactDates(text, day)).at(-1)?.text ?? null;

const ofYear =
  /(?<![\p{L}\d])(?:\p{Lu}{1,3}[ ./-]?(\d\d)|(\d\d)[ ./-]?\p{Lu}{1,3})(?![\p{L}\d]|[.,]\d)[^\d.;!?。]{1,40}((?:19|20)\d\d)(?![\d\p{Script=Latin}])/gu;

/** "V68: Vierzon, 1968": a code of letters and the last two figures of the year behind it; these being the same, it is no other year. */
function yearsOfCodes(text: string): SaidExample[] {
  return [...text.matchAll(ofYear)].flatMap(({ 0: all, 1: behind, 2: before, 3: year, index }): SaidExample[] => {
    const figures = behind ?? before!;
    if (!year!.endsWith(figures)) return [];
    const written = /^(?:\p{Lu}{1,3}[ ./-]?\d\d|\d\d[ ./-]?\p{Lu}{1,3})/u.exec(all)![0];
    const { code, lookAlike } = plainCode(written);
    return [{ code, reads: year!, lookAlike, start: index, end: index + all.length }];
  });
}

/** Codes whose date stands right behind them: "KV0915 means January 1995". A bare year is too little. */
export function readExamples(text: string, day: string): SaidExample[] {
  const dates = exactDates(text, day);
  if (dates.length === 0) return yearsOfCodes(text);
  const written = [...codesIn(text, dates), ...letterAndYearIn(text)].sort((a, b) => a.start - b.start);
  let next = 0;
  return written.flatMap((code, index): SaidExample[] => {
    const until = written[index + 1]?.start ?? text.length;
    while (dates[next] && dates[next]!.start < code.end) next += 1;
    const date = dates[next] && dates[next]!.start < until ? dates[next] : undefined;
    if (!date || date.start - code.end > nearest || /[!?。;]|\.\s/.test(text.slice(code.end, date.start))) return [];
    const isIssue =
      /^[1-9]\d{0,2}$/.test(code.text) && issueSign.test(text.slice(Math.max(0, code.start - 8), code.start));
    if (isIssue && /^\s?[,(]\s?$/u.test(text.slice(code.end, date.start))) return [];
    const figures = shortYear.exec(code.text)?.[1];
    if (figures !== undefined && !date.reads.slice(0, 4).endsWith(figures)) return [];
    const { code: plain, lookAlike } = plainCode(code.text);
    return [{ code: plain, reads: date.reads, lookAlike, start: code.start, end: date.end }];
  });
}

/** Examples as a maker file keeps them. */
export const plainExamples = (examples: readonly SaidExample[]) => examples.map(({ code, reads }) => ({ code, reads }));
