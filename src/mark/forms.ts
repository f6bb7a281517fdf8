import { type FoundWhere, type MarkFound, standsOnPiece } from './define';
import type { RowName } from './row-names';
import { type DatedRow, foundByRow, rowOf } from './rows';
import type { PlainCaution } from './says';

/** A form in which something is written, and the row that dates it. */
export interface WrittenForm {
  row: RowName;
  pattern: RegExp;
}

/** What is written in one of these forms, in the order of the text; where it `counts` each dates as its row says. */
export const foundByForms = (
  forms: readonly WrittenForm[],
  rows: ReadonlyMap<string, DatedRow>,
  text: string,
  caution: PlainCaution,
  counts: (row: RowName, at: number) => boolean = () => true,
): MarkFound[] =>
  forms
    .flatMap(({ row, pattern }) =>
      [...text.matchAll(pattern)]
        .filter(({ index }) => counts(row, index))
        .flatMap(({ index, 0: words }) => foundByRow(rowOf(rows, row), index, index + words.length, caution)),
    )
    .sort((a, b) => a.start - b.start);

/** Forms of an address on a label: it counts on the piece, and dates the label. */
export const foundOnLabel = (
  forms: readonly WrittenForm[],
  rows: ReadonlyMap<string, DatedRow>,
  text: string,
  where: FoundWhere,
): MarkFound[] => foundByForms(forms, rows, text, 'dates-label', (_, at) => standsOnPiece(text, at, where));
