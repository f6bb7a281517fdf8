import { type FoundWhere, type MarkFound, standsOnPiece } from './define';
import type { RowName } from './row-names';
import { type DatedRow, foundByRow, rowOf } from './rows';

/** A form in which an address on a label is written, and the row that dates it. */
export interface WrittenForm {
  row: RowName;
  pattern: RegExp;
}

/** What is written in one of these forms on the piece, in the order of the text; each dates the label. */
export const foundByForms = (
  forms: readonly WrittenForm[],
  rows: ReadonlyMap<string, DatedRow>,
  text: string,
  where: FoundWhere,
): MarkFound[] =>
  forms
    .flatMap(({ row, pattern }) =>
      [...text.matchAll(pattern)]
        .filter((match) => standsOnPiece(text, match.index, where))
        .flatMap((match) => foundByRow(rowOf(rows, row), match.index, match.index + match[0].length, 'dates-label')),
    )
    .sort((a, b) => a.start - b.start);
