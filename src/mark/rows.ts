import type { Strength } from '../source';
import { partialDateSpan, type Span } from '../span';
import { type MarkFound, rowSource } from './define';
import { type NotedRow, notedRows, type RowName, rowNames } from './row-names';
import type { MarkCaution, PlainCaution } from './says';

/** A row of a table of marks as the JSON file holds it; days are partial ISO dates. */
export interface DatedRow {
  id: RowName;
  /** Nothing older carries it; null when unknown. */
  from: string | null;
  /** Normal use ended; old stock may be later. */
  to: string | null;
  strength: Strength;
  verified: 'stored' | 'memory';
  source: string;
  places?: string[];
}

/** A JSON table's rows by id; the JSON is ours, so a row that is not well formed is a bug and throws. */
export function rowsById(rows: readonly unknown[]): ReadonlyMap<string, DatedRow> {
  return new Map(
    rows.map((row) => {
      const read = row as DatedRow;
      const wellFormed = rowNames.includes(read.id) && (read.from !== null || read.to !== null) && read.source;
      if (!wellFormed || (read.strength === 'hard' && read.verified !== 'stored'))
        throw new Error(`bad row: ${read.id}`);
      return [read.id, read];
    }),
  );
}

/** First day of a partial date ("1947-10" is 1 October 1947). */
const firstDay = (date: string | null) => (date === null ? null : (partialDateSpan(date)?.from ?? null));
const lastDay = (date: string | null) => (date === null ? null : (partialDateSpan(date)?.to ?? null));

/** The whole window in which a row's mark was in normal use. */
export const rowSpan = (row: DatedRow): Span => ({ from: firstDay(row.from), to: lastDay(row.to), precision: 'range' });

/**
 * What a row says where its mark was found. The beginning is the firm part: nothing older carries the mark. The end is
 * only where normal use ended, since old stock of labels was used up; so a hard row with an end gives two statements,
 * a hard one for its beginning and a soft one for the whole window.
 */
export function foundByRow(
  row: DatedRow,
  start: number,
  end: number,
  caution?: PlainCaution,
  place: string | null = null,
): MarkFound[] {
  const verified = row.verified === 'stored';
  const cautions: MarkCaution[] = [
    ...(isNoted(row.id) ? [{ kind: 'row' as const, row: row.id }] : []),
    ...(caution ? [{ kind: caution }] : []),
  ];
  const found = (span: Span, strength: Strength, normal = false): MarkFound => ({
    start,
    end,
    spans: [span],
    places: row.places ?? [],
    strength,
    verified,
    source: rowSource(row.source, verified),
    says: { kind: 'row', row: row.id, place, span, normal },
    cautions,
  });
  const window = rowSpan(row);
  if (row.strength === 'soft' || !verified) return [found(window, 'soft')];
  const beginning: Span = { ...window, to: null };
  const firm = window.from === null ? [] : [found(beginning, 'hard')];
  return window.to === null ? firm : [...firm, found(window, 'soft', true)];
}

const isNoted = (row: RowName): row is NotedRow => (notedRows as readonly RowName[]).includes(row);

/** A row that the mark's own file names by id: missing is a bug. */
export function rowOf(rows: ReadonlyMap<string, DatedRow>, id: RowName): DatedRow {
  const row = rows.get(id);
  if (!row) throw new Error(`no row ${id}`);
  return row;
}
