import { unknownPlace } from '../../place';
import { foldWords } from '../../text';
import { plainCode, plantCodes } from '../said/code';
import { exactDates, readExamples } from '../said/example';
import { readCounts } from '../said/number';
import { readPeriods } from '../said/period';
import { readPlace } from '../said/place';
import { readSizes } from '../said/size';
import { isPeriod, withoutPeriods } from '../said/used-text';
import { isOnPiece, opensPlaceOnPiece } from '../said/where';
import { tellingFinder, wholeWords } from '../words';
import { nothing } from './row';

const units = tellingFinder('year', 'month', 'week', 'quarter', 'serial', 'no-code');
const none = wholeWords('none-at-all');
const stops = tellingFinder('launched', 'ended', 'since', 'until', 'time-of-use', 'produced');
/** A day by which "this year" would be told; no cell's date is. */
const someDay = '2000-01-01';

export const isYear = (text: string): boolean => /^(?:1[6-9]|20)\d\d$/.test(text);
/** A code with its date beside it. */
export const isDated = (text: string): boolean => readExamples(text, someDay).length > 0;

/** A whole code: at least three digits, with letters or without. */
export const isWholeCode = (text: string): boolean =>
  /^(?:[A-Z]{0,3}[ -]?\d{3,8}|\d{3,8}[ -]?[A-Z]{1,3})(?!\d)/.test(plainCode(text).code);

/** "1961–1988", "open since 1952": a time, and at most the words that say of what. */
function isTime(text: string): boolean {
  if (isPeriod(text)) return true;
  const { text: rest, periods } = withoutPeriods(text);
  if (periods.length !== 1 || text.length > 40) return false;
  const words = stops(rest).reduceRight((all, { start, end }) => all.slice(0, start) + all.slice(end), rest);
  return !/\d/.test(words) && words.replace(/[^\p{L}]/gu, '').length <= 8;
}

/** "month and year", "two letters", "nothing": how a code was built, or that there was none. */
const tellsForm = (text: string): boolean =>
  isNotation(text) ||
  (!isWholeCode(text) &&
    readPeriods(text).length === 0 &&
    (units(text).length > 0 || readCounts(text).length > 0 || none.has(foldWords(text).text)));
/** "MMYY", "Lyyww", "works letter, YY, WW": signs of units, a year among them. */
export const isNotation = (text: string): boolean => {
  const signs = (text.match(/(?<!\p{L})[A-Za-z]{2,10}(?!\p{L})/gu) ?? []).filter(
    (one) => /^(?:[YJAMWSQLXDT]+|L?[yjamwsqd]+)$/.test(one) && (one === one.toLowerCase() ? one.length > 3 : true),
  );
  const hasYear = signs.some((one) => /YY|JJ|yy|jj/.test(one) || (/AA/.test(one) && one.length > 3));
  return hasYear && (signs.some((one) => one.length > 3) || signs.length > 1);
};

const longestName = 40;
/** A name as tables write them: a capital opens it, and a number may close it. */
const isName = (text: string): boolean =>
  text.length <= longestName &&
  /^["“«「]?(?:[\p{Lu}\p{Script=Han}\p{Script=Katakana}]|(?:la|le|il|el|de|het|das|der|die)\s\p{Lu})/u.test(text) &&
  !/[.;:!?]\s|\d{4}/.test(text);

/** What a cell may tell by its own words. One cell may be several: what its column is, all its cells decide between them. */
const tests = {
  code: (text: string) => plantCodes(text) !== null,
  period: isTime,
  year: isYear,
  size: (text: string) =>
    /^\D{0,12}\d/.test(text) && (readSizes(text).length === 1 || readSizes(`${text} cm`).length === 1),
  format: tellsForm,
  dated: isDated,
  example: isWholeCode,
  reads: (text: string) => exactDates(text, someDay).length === 1,
  where: opensPlaceOnPiece,
  /** A place that names a part of a bag: "in Paris" is none. */
  onPiece: (text: string) => opensPlaceOnPiece(text) && isOnPiece(text),
  place: (text: string) =>
    text.length <= longestName && !/\d/.test(text) && plantCodes(text) === null && readPlace(text, 'cell') !== null,
  country: (text: string) => (readPlace(text, 'cell')?.place ?? unknownPlace) !== unknownPlace,
  name: isName,
  /** What a part was made of. */
  words: (text: string) => /\p{L}{3}|\p{Script=Han}/u.test(text) && !/\d/.test(text) && text.length <= 80,
} satisfies Record<string, (text: string) => boolean>;
export type Sort = keyof typeof tests;

/** A cell longer than this is prose, and no more is asked of it. */
const longestCell = 300;
export const isOf = (sort: Sort, text: string): boolean => text.length <= longestCell && tests[sort](text);

/** A column's cells that say anything, in their order. */
export const filledOf = (texts: readonly string[]): string[] =>
  texts.filter((text) => text !== '' && !nothing.test(text)).slice(0, 40);

const twoNames = /^\p{Lu}\p{Ll}+\s(?:\p{Lu}\.\s)?\p{Lu}\p{Ll}+$/u;
/** Whether most of a column's cells look like a first and a family name: of people, and not of towns. */
export const arePeople = (texts: readonly string[]): boolean => {
  const filled = filledOf(texts);
  return filled.filter((text) => twoNames.test(text) && !isOf('country', text)).length > filled.length / 2;
};

/** Of so many cells one may be written otherwise. */
const fewestWithSlip = 8;

/** Whether a column's cells are all of a sort: of a few, each; of many, all but one. */
export function areOf(sort: Sort, texts: readonly string[]): boolean {
  const filled = filledOf(texts);
  const others = filled.filter((text) => !isOf(sort, text)).length;
  return filled.length > 0 && others <= (filled.length >= fewestWithSlip ? 1 : 0);
}
