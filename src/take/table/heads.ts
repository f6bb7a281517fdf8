import { type Cell, textOfCell } from '../page/grid';
import { isLabel } from '../said/label';
import { isPeriod } from '../said/used-text';
import { yearNamed } from './columns';
import { isLikeBelow, rowsOfHeads } from './frames';

/** One cell over the whole row: a heading inside the table. */
export const isSection = (row: readonly Cell[]): boolean => {
  const own = row.filter(({ own: first, words }) => first && words);
  return own.length === 1 && own[0]!.span >= Math.max(2, row.length - 1);
};

export function isHeader(row: readonly Cell[]): boolean {
  const filled = row.filter(({ words }) => words !== null);
  if (filled.length < 2 || opensAsData(textOfCell(filled[0]))) return false;
  const named = filled.filter(
    (cell) => isLabel(textOfCell(cell)) || yearNamed(textOfCell(cell)) !== null || isPeriod(textOfCell(cell)),
  ).length;
  // Two columns that the page itself heads: "No. | Workshop".
  const fewest = filled.length === 2 && filled.every(({ head }) => head) ? 1 : 2;
  return named >= fewest && named >= filled.length / 2;
}

/** A period, a code or a number opens a row of data. */
const opensAsData = (text: string): boolean =>
  isPeriod(text) || /^(?:[A-Z]{1,2}\d?|\d{1,3}|[A-Z]{0,3}\d{3,8}[A-Z]{0,3})$/.test(text);

function isSecondHeader(first: readonly Cell[], second: readonly Cell[] | undefined): boolean {
  if (!second || !isHeader(second)) return false;
  return first.some(
    ({ span, own }, at) => own && span > 1 && second[at] !== undefined && second[at].words !== first[at]!.words,
  );
}

/** The heads of a table's columns, what stands over them, and the rows below; without heads, empty ones. */
export interface Headed {
  headers: string[];
  above: string[];
  data: Cell[][];
  /** Whether anything heads them. */
  known: boolean;
}

/** Parts a table from what heads its columns: known words, or rows that are unlike all below them. */
export function headedRows(body: Cell[][], width: number): Headed {
  const texts = body.map((row) => row.map(textOfCell));
  const likely = body.slice(0, 4).findIndex((row) => !isSection(row) && isHeader(row));
  const named = likely >= 0 && isLikeBelow(texts[likely]!, texts.slice(likely + 1)) ? -1 : likely;
  const unlike = named < 0 ? rowsOfHeads(texts) : 0;
  if (named < 0 && unlike === 0) {
    const empty = Array.from({ length: width }, () => '');
    return { headers: empty, above: empty, data: body, known: false };
  }
  const first = Math.max(named, 0);
  // A heading over several columns is told apart below it: "Size" over "Width", "Height".
  const below =
    unlike === 2 || (named >= 0 && isSecondHeader(body[first]!, body[first + 1])) ? texts[first + 1]! : null;
  const above = texts[first]!;
  return {
    headers: above.map((text, column) => below?.[column] || text),
    above,
    data: body.slice(first + (below ? 2 : 1)),
    known: true,
  };
}
