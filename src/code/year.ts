import type { Span } from '../span';
import type { LaidGroup } from './layout';

/** Without a clock a system still in use is taken to last to this year, or for so many years when it began late. */
const farYear = 2050;
const fewestOpenYears = 60;

/**
 * First and last year of a period. An open end lasts to `latest`, the year in which the code was seen; when that is
 * not known, not so long that a code of the year before the beginning would be read as a hundred years later.
 */
export function yearsOf(used: Span, latest?: number): { first: number; last: number } {
  if (used.from === null) return withoutBeginning(used, latest);
  const first = Number(used.from.slice(0, 4));
  const open = Math.max(first + fewestOpenYears - 1, Math.min(first + 99, farYear));
  const last = used.to === null ? Math.max(first, latest ?? open) : Number(used.to.slice(0, 4));
  return { first, last };
}

/** Where nobody knows the beginning, two figures are those of the hundred years before the end. */
function withoutBeginning({ to }: Span, latest?: number): { first: number; last: number } {
  const last = to === null ? (latest ?? farYear) : Number(to.slice(0, 4));
  return { first: Math.max(1, last - 99), last };
}

/** Years with the remainder `rest` for `modulus` in a period; when there is none, the one nearest to it. */
function yearsWithRest(rest: number, modulus: number, first: number, last: number): number[] {
  const start = first + ((((rest - first) % modulus) + modulus) % modulus);
  const inside: number[] = [];
  for (let year = start; year <= last && inside.length < 40; year += modulus) inside.push(year);
  if (inside.length > 0) return inside;
  const before = start - modulus;
  return [first - before <= start - last ? before : start];
}

/** The years that a group's value can mean, those in the period first; never empty. */
export function yearsMeant(group: LaidGroup, value: string, used: Span, latest?: number): number[] {
  const { first, last } = yearsOf(used, latest);
  const [kind, start, letters] = group.writes.split(' ');
  if (kind === 'cycle') {
    const base = Number(start) + letters!.indexOf(value);
    const years = yearsWithRest(base % letters!.length, letters!.length, Math.max(first, Number(start)), last);
    return years.map((year) => Math.max(year, base));
  }
  const number = Number(value);
  return group.width === 4 ? [number] : yearsWithRest(number, 10 ** group.width, first, last);
}

/** How many values of the year group lie in the period (at most all that can be written). */
export function yearValues(group: LaidGroup, used: Span, latest?: number): number {
  const { first, last } = yearsOf(used, latest);
  const most = group.values?.length ?? 10 ** group.width;
  return Math.min(most, last - first + 1);
}
