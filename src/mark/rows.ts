import type { Strength } from '../source';
import { partialDateSpan, type Span, spanWords } from '../span';
import { type MarkFound, rowSource } from './define';

/** A row of a table of marks as the JSON file holds it; days are partial ISO dates. */
export interface DatedRow {
  id: string;
  /** "A five-digit ZIP code was written on labels": the span is said after it. */
  subject: string;
  /** Nothing older carries it; null when unknown. */
  from: string | null;
  /** Normal use ended; old stock may be later. */
  to: string | null;
  strength: Strength;
  verified: 'stored' | 'memory';
  source: string;
  places?: string[];
  note?: string;
}

/** A JSON table's rows by id; the JSON is ours, so a row that is not well formed is a bug and throws. */
export function rowsById(rows: readonly unknown[]): ReadonlyMap<string, DatedRow> {
  return new Map(
    rows.map((row) => {
      const read = row as DatedRow;
      const wellFormed = read.id && read.subject && (read.from !== null || read.to !== null) && read.source;
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
export function foundByRow(row: DatedRow, start: number, end: number, caution?: string): MarkFound[] {
  const verified = row.verified === 'stored';
  const cautions = [row.note, caution].filter(Boolean).join(' ');
  const found = (span: Span, strength: Strength, words: string): MarkFound => ({
    start,
    end,
    spans: [span],
    places: row.places ?? [],
    strength,
    verified,
    source: rowSource(row.source, verified),
    statement: `${row.subject} ${words}`,
    ...(cautions ? { caution: cautions } : {}),
  });
  const window = rowSpan(row);
  if (row.strength === 'soft' || !verified) return [found(window, 'soft', spanWords(window))];
  const beginning: Span = { ...window, to: null };
  const firm = window.from === null ? [] : [found(beginning, 'hard', spanWords(beginning))];
  return window.to === null ? firm : [...firm, found(window, 'soft', `${spanWords(window)} in normal use`)];
}

/** A row that the mark's own file names by id: missing is a bug. */
export function rowOf(rows: ReadonlyMap<string, DatedRow>, id: string): DatedRow {
  const row = rows.get(id);
  if (!row) throw new Error(`no row ${id}`);
  return row;
}
