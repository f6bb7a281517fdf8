import { isoWeekSpan, partialDateSpan, periodSpan, quarterSpan, type Span, spanHolds } from '../span';
import type { Reading } from './types';

/** What an example says its code reads: dates (any of them), places (all of them), or that nothing reads it. */
export interface Stated {
  spans: Span[];
  places: string[];
  undated: boolean;
  nothing: boolean;
}

function statedDate(word: string): Span | null {
  const week = /^(\d{4})-W(\d{2})$/i.exec(word);
  if (week) return isoWeekSpan(Number(week[1]), Number(week[2]));
  const quarter = /^(\d{4})-Q([1-4])$/i.exec(word);
  if (quarter) return quarterSpan(Number(quarter[1]), Number(quarter[2]));
  const range = /^([\d-]*)\s*(?:\.\.|\/| to )\s*([\d-]*)$/.exec(word);
  if (range && (range[1] !== '' || range[2] !== '')) {
    return periodSpan([range[1] === '' ? null : range[1]!, range[2] === '' ? null : range[2]!]);
  }
  return partialDateSpan(word);
}

/**
 * Reads the `reads` of an example: a date (`1995`, `1995-01`, `1995-01-21`, week `1996-W14`, quarter `1996-Q2`, range
 * `1990-03..1993`, open `1990..` or `..1993`), several with "or" between; then place codes; or "undated"; or "nothing".
 * Returns the word that is none of these when there is one.
 */
export function readStated(reads: string): Stated | { unknown: string } {
  const stated: Stated = { spans: [], places: [], undated: false, nothing: false };
  for (const piece of reads.split(',').map((piece) => piece.trim())) {
    if (piece === '') continue;
    if (piece.toLowerCase() === 'undated') stated.undated = true;
    else if (piece.toLowerCase() === 'nothing') stated.nothing = true;
    else if (/^([A-Z]{2}|[A-Z]{4})(\s+[A-Z]{2,4})*$/.test(piece)) stated.places.push(...piece.split(/\s+/));
    else {
      for (const word of piece.split(/\sor\s|\|/)) {
        const span = statedDate(word.trim());
        if (!span) return { unknown: word };
        stated.spans.push(span);
      }
    }
  }
  return stated;
}

/** Whether a reading is what an example says: its date lies in a stated one, and its places are the stated ones. */
export function readsAs(reading: Reading, stated: Stated): boolean {
  const dated = stated.spans.length === 0 || stated.spans.some((span) => reading.span && spanHolds(span, reading.span));
  const placed = stated.places.every((place) => reading.places.includes(place));
  return dated && placed && (!stated.undated || reading.span === null);
}

/** A week from Monday to Sunday is of the year of its Thursday. Source: ISO 8601-1:2019. */
const isoWeekWords = (span: Span): string => {
  const monday = Date.parse(`${span.from}T00:00:00Z`);
  if (new Date(monday).getUTCDay() !== 1) return `${span.from}..${span.to}`;
  const thursday = monday + 3 * 86_400_000;
  const year = new Date(thursday).getUTCFullYear();
  const week = Math.floor((thursday - Date.UTC(year, 0, 1)) / (7 * 86_400_000)) + 1;
  return `${year}-W${String(week).padStart(2, '0')}`;
};

/** A reading in the form of an example's `reads`: "1995-01, BE". */
export function readsOf({ span, places }: Pick<Reading, 'span' | 'places'>): string {
  return [span ? spanReads(span) : 'undated', ...places].join(', ');
}

/** A span in the form of an example's `reads`. */
export function spanReads(span: Span): string {
  const { from, to, precision } = span;
  if (from === null || to === null) return `${from ?? ''}..${to ?? ''}`;
  if (precision === 'day') return from;
  if (precision === 'month') return from.slice(0, 7);
  if (precision === 'year') return from.slice(0, 4);
  if (precision === 'quarter') return `${from.slice(0, 4)}-Q${Math.ceil(Number(from.slice(5, 7)) / 3)}`;
  return precision === 'week' ? isoWeekWords(span) : `${from}..${to}`;
}
