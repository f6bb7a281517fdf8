import { daysInMonth, isoDate } from '../span';
import type { DiamondFault } from './says';
import table from './tables/uk-diamond-marks.json';

/** The corners of a diamond mark as they stand: a letter, or a number as digits. `null` where it cannot be read. */
export interface DiamondCorners {
  top: string;
  left: string;
  right: string;
  bottom: string;
}

export type DiamondReading =
  | {
      ok: true;
      layout: '1842' | '1868';
      /** Every day of registration that the letters allow, ISO. */
      days: string[];
      /** False when the days follow from an exception that stands from memory. */
      verified: boolean;
    }
  | { ok: false; why: DiamondFault };

const letter = /^[A-Z]$/;
const digits = /^\d{1,2}$/;
const years1842: Record<string, number> = table.yearLetters1842;
const years1868: Record<string, number> = table.yearLetters1868;
const monthsOf: Record<string, number> = table.monthLetters;

/**
 * Reads a diamond mark. A number in the right corner is the day of the layout of 1842 to 1867, a letter there the year
 * of the layout of 1868 to 1883. Letters that a series lacks are refused, as are days that their month lacks.
 * Source: Antique Metalware Society, Key to Diamond Registration Marks.
 */
export function readDiamond({ top, left, right, bottom }: DiamondCorners): DiamondReading {
  if (digits.test(right)) return dayOf('1842', years1842, top, left, Number(right));
  if (letter.test(right)) return dayOf('1868', years1868, right, bottom, Number(top));
  return { ok: false, why: { kind: 'right-corner', is: right } };
}

function dayOf(
  layout: '1842' | '1868',
  years: Record<string, number>,
  yearLetter: string,
  monthLetter: string,
  day: number,
): DiamondReading {
  const series = layout === '1842' ? '1842-1867' : '1868-1883';
  if (layout === '1868' && yearLetter === 'W' && monthLetter === 'G') return march1878(day);
  const year = years[yearLetter];
  if (year === undefined) return { ok: false, why: { kind: 'year-letter', is: yearLetter, series } };
  const month = monthsOf[monthLetter];
  if (month === undefined) return { ok: false, why: { kind: 'month-letter', is: monthLetter } };
  const days = [month, ...alsoMonths(year, monthLetter, day)]
    .filter((one) => Number.isInteger(day) && day >= 1 && day <= daysInMonth(year, one))
    .map((one) => isoDate(year, one, day));
  return days.length > 0
    ? { ok: true, layout, days, verified: true }
    : { ok: false, why: { kind: 'no-day', month: monthLetter, day: Number.isInteger(day) ? day : null } };
}

/** R stood for 1 to 19 September 1857 as well as for August, K for December 1860 as well as for November. */
function alsoMonths(year: number, monthLetter: string, day: number): number[] {
  if (year === 1857 && monthLetter === 'R' && day <= 19) return [9];
  return year === 1860 && monthLetter === 'K' ? [12] : [];
}

/** From 1 to 6 March 1878 the letters were W and G (from memory). */
const march1878 = (day: number): DiamondReading =>
  day >= 1 && day <= 6
    ? { ok: true, layout: '1868', days: [isoDate(1878, 3, day)], verified: false }
    : { ok: false, why: { kind: 'march-1878' } };
