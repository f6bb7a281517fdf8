import { type Cell, textOfCell } from '../page/grid';

const letterOf = (at: number): string => String.fromCharCode(65 + at);
const isEmpty = (row: readonly Cell[]): boolean => row.every((cell) => textOfCell(cell).trim() === '');

/** "A, B, C" over its columns: the marks of a sheet that was published as a page, and nothing of what it tells. */
const isLettered = ([corner, ...letters]: readonly Cell[]): boolean =>
  textOfCell(corner) === '' && letters.length > 1 && letters.every((cell, at) => textOfCell(cell) === letterOf(at));

/** "1, 2, 3" beside its rows. */
const isNumbered = (rows: readonly (readonly Cell[])[]): boolean =>
  rows.length > 1 && rows.every(([first], at) => textOfCell(first) === String(at + 1));

/** The rows of a published sheet without the letters of its columns and the numbers of its rows; any other table as it is. */
export function withoutMarks(rows: readonly Cell[][]): readonly Cell[][] {
  const [first, ...others] = rows;
  if (!first || !isLettered(first)) return rows;
  return isNumbered(others) ? others.map((row) => row.slice(1)) : others;
}

/** Tables that blank rows part: each with a head and a row at least; null where no blank row parts two of them. */
export function partedTables(rows: readonly Cell[][]): Cell[][][] | null {
  const parts: Cell[][][] = [[]];
  for (const row of rows) {
    if (!isEmpty(row)) parts.at(-1)!.push(row);
    else if (parts.at(-1)!.length > 0) parts.push([]);
  }
  const filled = parts.filter((part) => part.length > 0);
  return filled.length > 1 && filled.every((part) => part.length > 1) ? filled : null;
}
