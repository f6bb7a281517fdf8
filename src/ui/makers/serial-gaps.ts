/** Numbers that no range of a serial table holds, or that two hold; `row` is the place of the range they follow or meet. */
export interface TableFault {
  kind: 'gap' | 'overlap';
  first: number;
  last: number;
  /** The range, counted from 0, behind which the gap lies, or that begins inside an earlier one. */
  row: number;
}

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/**
 * Gaps and overlaps between the ranges of a table that may be half written: a range without a first number is passed
 * over, one without a last number is open. A gap is no mistake (numbers may never have been used), so it is only told.
 */
export function tableFaults(table: readonly unknown[]): TableFault[] {
  const ranges = table.flatMap((entry, row) => {
    const { first, last } = (entry ?? {}) as { first?: unknown; last?: unknown };
    if (!isNumber(first)) return [];
    return [{ row, first, last: isNumber(last) ? last : Number.POSITIVE_INFINITY }];
  });
  ranges.sort((one, other) => one.first - other.first);
  let reached = ranges[0];
  return ranges.slice(1).flatMap((range): TableFault[] => {
    const before = reached!;
    if (range.last > before.last) reached = range;
    if (range.first <= before.last) {
      return [{ kind: 'overlap', first: range.first, last: Math.min(before.last, range.last), row: range.row }];
    }
    if (range.first === before.last + 1) return [];
    return [{ kind: 'gap', first: before.last + 1, last: range.first - 1, row: before.row }];
  });
}
