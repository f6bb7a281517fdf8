import { foldWords } from '../../text';
import type { Cell } from '../page/grid';
import type { Role } from '../said/label';
import type { Used } from '../said/period';
import { wholeWords } from '../words';

/** A row by what its columns tell. */
export interface Row {
  cells: Map<Role, Cell[]>;
  headers: Map<Role, string>;
  /** Cells under a header that names a part of the piece: "Lining". */
  /** `until` is the time of the last row that a merged cell fills. */
  parts: { header: string; cell: Cell; until?: Cell }[];
  /** The heading inside the table that the row stands under. */
  section: string | null;
  whole: readonly Cell[];
}

export const said = (row: Row, role: Role): string =>
  (row.cells.get(role) ?? []).flatMap((cell) => cell.words?.text ?? []).join(', ');
export const has = (row: Row, ...wanted: Role[]): boolean => wanted.every((role) => row.cells.has(role));
/** A cell that says nothing: "–", "?", "n/a". */
export const nothing = /^[\s\-–—/.?]{0,6}$/;

const unknown = wholeWords('unknown');
const none = wholeWords('none-at-all');
const without = /^(?:without|no|sans|ohne|kein[e]?|senza|sin|zonder|geen)\s/iu;
/** Whether a cell tells nothing of a material: it is empty, not known, or says that there was none ("sin forro"). */
export function saysNothing(text: string): boolean {
  const plain = foldWords(text).text;
  return (
    nothing.test(text) ||
    !/\p{L}{2}|\p{Script=Han}/u.test(text) ||
    unknown.has(plain) ||
    none.has(plain) ||
    without.test(text)
  );
}

export const dated = ({ used, about }: Used) => ({ ...(used && { used }), ...(about && { about }) });
