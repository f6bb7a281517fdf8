/** A row of a numbered series: the first number of a year (or of the day, where one is known) and whether it was verified. */
export interface SeriesRow {
  /** `YYYY` or `YYYY-MM-DD`: the number and all later ones are no older. */
  since: string;
  first: number;
  verified: boolean;
}

export interface SeriesPlace {
  /** The last row at or below the number. */
  row: SeriesRow;
  /** The last verified row at or below it, with which a firm "not before" stands. */
  firm: SeriesRow | null;
  /** Whether the number lies beyond the table: then its year is that of the last row, or later. */
  beyond: boolean;
  /** Distance to the row's own first number and to the next row's (null beyond the table). */
  above: number;
  below: number | null;
}

/** Where a number stands in a series whose rows rise strictly; null below the first row. Binary search. */
export function placeInSeries(rows: readonly SeriesRow[], number: number): SeriesPlace | null {
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.first <= number) low = middle + 1;
    else high = middle;
  }
  const row = rows[low - 1];
  if (!row) return null;
  const next = rows[low];
  const firm = rows.slice(0, low).findLast((one) => one.verified) ?? null;
  return { row, firm, beyond: next === undefined, above: number - row.first, below: next ? next.first - number : null };
}

/** "1,234,567" as a number; commas, points, spaces and apostrophes may group the digits. */
export const groupedNumber = (digits: string): number => Number(digits.replace(/[,.'’\s]/g, ''));

/** "1,234,567" */
export const numberWords = (number: number): string => number.toLocaleString('en-US');
