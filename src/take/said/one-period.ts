import type { TakenPeriod } from '../types';

/** The period that is told; none where several are. */
export const onePeriod = (used: TakenPeriod | TakenPeriod[] | undefined): TakenPeriod | undefined =>
  used && !Array.isArray(used[0]) ? (used as TakenPeriod) : undefined;

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
