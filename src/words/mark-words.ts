import type { MarkSays, NotedRow, PlainCaution, RowName } from '../mark';
import type { Kit } from './kit';

/** What public marks tell, in one language: statements without a full stop, cautions as sentences. */
export interface MarkWords {
  says: { [K in MarkSays['kind']]: (says: Extract<MarkSays, { kind: K }>, kit: Kit) => string };
  /** What each row's mark is, before the dates of its use: "A barcode was written on labels". */
  rows: Record<RowName, string>;
  /** How far a row holds. */
  notes: Record<NotedRow, string>;
  cautions: Record<PlainCaution, string>;
  /** The letter's style decides its year; `first` is the year with which the tables begin. */
  letterStyle: (first: number) => string;
}
