import type { Cell } from '../page/grid';
import type { TakenPeriod } from '../types';
import type { Role } from './columns';

/** A row by what its columns tell. */
export interface Row {
  cells: Map<Role, Cell[]>;
  headers: Map<Role, string>;
  /** Cells under a header that names a part of the piece: "Lining". */
  parts: { header: string; cell: Cell }[];
  /** The heading inside the table that the row stands under. */
  section: string | null;
  whole: readonly Cell[];
}

export const said = (row: Row, role: Role): string =>
  (row.cells.get(role) ?? []).flatMap((cell) => cell.words?.text ?? []).join(', ');
export const has = (row: Row, ...wanted: Role[]): boolean => wanted.every((role) => row.cells.has(role));
/** A cell that says nothing: "–", "?", "n/a". */
export const nothing = /^[\s\-–—/.?]{0,6}$/;

export interface Used {
  used?: TakenPeriod | TakenPeriod[];
  about?: ('from' | 'to')[];
  backwards: boolean;
}
export const dated = ({ used, about }: Used) => ({ ...(used && { used }), ...(about && { about }) });
