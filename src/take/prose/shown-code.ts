import { plainCode } from '../said/code';
import { confirmedLayout } from '../said/confirmed';
import { exactDates, type SaidExample, unitsOfDate } from '../said/example';
import type { SaidLayout } from '../said/layout-words';
import { tellingFinder } from '../words';
import type { Sentence } from './sentences';

/** "06 = June", "82 is 1982": a few figures of a code, and right behind them what they are. */
const figures = /(?<![\d\p{L}])(\d{1,2})(?![\d\p{L}])[^\d.;!?。]{1,16}/gu;
const longestMonth = 24;

/** The month that a code's own figures are said to be, and the year; as a date, where both are told once. */
function dateInParts(text: string, code: string, day: string): string | null {
  const digits = code.replace(/\D/g, '');
  const parts = [...text.matchAll(figures)].filter(([, part]) => digits.includes(part!));
  const behind = ({ 0: all, 1: part, index }: RegExpMatchArray) =>
    text.slice(index! + part!.length, index! + all.length + longestMonth);
  const years = new Set(
    parts.flatMap((one) => {
      const year = /^[^\d]{1,16}((?:19|20)\d\d)(?!\d)/u.exec(behind(one))?.[1];
      return year?.endsWith(one[1]!) ? [year] : [];
    }),
  );
  const [year, ...others] = years;
  if (year === undefined || others.length > 0) return null;
  const months = new Set(
    parts.flatMap((one) => {
      const words = behind(one).match(/\p{L}{3,12}|\p{N}{1,2}月/gu) ?? [];
      return words.slice(0, 3).flatMap((word) => {
        const [date] = exactDates(`${word} ${year}`, day);
        return date?.start === 0 && date.reads.slice(5) === one[1]!.padStart(2, '0') ? [date.reads] : [];
      });
    }),
  );
  const [reads, ...more] = months;
  return reads !== undefined && more.length === 0 ? reads : null;
}

/**
 * What an answer says of the code that was shown before it: its date, told whole or figure by figure; null where it tells no
 * date, or several.
 */
export function dateOfShown(sentences: readonly Sentence[], code: string, day: string): string | null {
  const dates = sentences.flatMap(({ text }) => exactDates(text, day));
  if (dates.length > 1) return null;
  return dates[0]?.reads ?? dateInParts(sentences.map(({ text }) => text).join(' '), code, day);
}

const plantWords = tellingFinder('plant');

/** The one form in which a code's figures write its date, where the answer names what its letters are; null where there is none. */
export function formOfShown(example: Pick<SaidExample, 'code' | 'reads'>, text: string): SaidLayout | null {
  const letters = /\p{Lu}{1,3}/u.exec(example.code)?.[0];
  const isNamed =
    letters !== undefined && new RegExp(`(?<![\\p{L}\\d])${letters}(?![\\p{L}\\d])`, 'u').test(text.normalize('NFKC'));
  // "The third quarter of 1971, workshop Middelburg": what its letters are is told, if not which.
  const isTold = letters !== undefined && (isNamed || plantWords(text).length > 0);
  const layout = isTold ? confirmedLayout([example], unitsOfDate(example.reads), false) : null;
  return layout && { layout, fits: true, by: 'words', units: unitsOfDate(example.reads) };
}

/** A code as it was shown, plain, with the date that is told of it. */
export const exampleShown = (code: string, reads: string): SaidExample => {
  const { code: plain, lookAlike } = plainCode(code);
  return { code: plain, reads, lookAlike, start: 0, end: 0 };
};
