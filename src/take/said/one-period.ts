import type { TakenPeriod } from '../types';
import type { SaidPeriod } from './period';

/** The period that is told; none where several are. */
export const onePeriod = (used: TakenPeriod | TakenPeriod[] | undefined): TakenPeriod | undefined =>
  used && !Array.isArray(used[0]) ? (used as TakenPeriod) : undefined;

/** From when on something was, that was not until the end of a period; from an end that is hedged on, not from the year behind it. */
export function timeFrom(
  period: TakenPeriod | undefined,
  about: readonly ('from' | 'to')[] = [],
): { used: TakenPeriod; about?: ['from'] } | undefined {
  if (about.includes('to') && period?.[1]) return { used: [period[1], null], about: ['from'] };
  const used = timeBeside(period, 'afterwards');
  return used && { used };
}

const shift = (year: string, by: number) => String(Number(year.slice(0, 4)) + by);

/** The time before or after a period, by whole years; none where that end of it is not told. */
export function timeBeside(
  period: TakenPeriod | undefined,
  side: 'beforehand' | 'afterwards',
): TakenPeriod | undefined {
  const [from, to] = period ?? [null, null];
  if (side === 'beforehand') return from ? [null, shift(from, -1)] : undefined;
  return to ? [shift(to, 1), null] : undefined;
}

/** "Until 1977, then until 1990": a time that is told to its end alone begins when what was told before ended. */
export function begunAt(period: SaidPeriod, from: string | null | undefined): SaidPeriod {
  const to = period.used[1];
  return period.form === 'until' && from && to !== null && from <= to ? { ...period, used: [from, to] } : period;
}
