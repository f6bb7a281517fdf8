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

/** A table of a sheet, and the words of the rows that head it. */
export interface SheetPart {
  rows: Cell[][];
  caption: string;
}

/** One cell that says anything, over the whole row or alone in it. */
const saysOne = (row: readonly Cell[]): boolean => row.filter(({ own, words }) => own && words).length === 1;
const textOfRow = (row: readonly Cell[]): string => textOfCell(row.find(({ words }) => words !== null));

/** Rows of one cell that stand over a table are its caption; those below it are remarks. */
function partOf(rows: readonly Cell[][]): SheetPart {
  const first = rows.findIndex((row) => !saysOne(row));
  const last = rows.findLastIndex((row) => !saysOne(row));
  return { rows: rows.slice(first, last + 1), caption: rows.slice(0, first).map(textOfRow).join(' ') };
}

/**
 * Tables that blank rows part, each with a head and a row at least: what stands alone between them is a remark. Null where no
 * blank row parts anything.
 */
export function partedTables(rows: readonly Cell[][]): SheetPart[] | null {
  const parts: Cell[][][] = [[]];
  for (const row of rows) {
    if (!isEmpty(row)) parts.at(-1)!.push(row);
    else if (parts.at(-1)!.length > 0) parts.push([]);
  }
  const filled = parts.filter((part) => part.length > 0);
  const tables = filled.filter((part) => part.some((row) => !saysOne(row))).map(partOf);
  return filled.length > 1 && tables.length > 0 && tables.every((part) => part.rows.length > 1) ? tables : null;
}
