import { type KnownCode, readKnownDate, readStated } from '../../code';
import { isPlaceCode } from '../../place';
import { findPlaces } from '../../text';
import { kit, strings } from '../../words';

const words = strings.makers.learn.rows;

/** One row as it was understood, or why it was not. `row` counts the lines of the text from 1. */
export type KnownRow =
  | { row: number; text: string; known: KnownCode; says: string; problem: null }
  | { row: number; text: string; known: null; problem: string };

/** A search over more rows would keep the page waiting, and six random ones settle a layout. */
export const mostRows = 200;
/** The teacher's own bounds. */
const mostCharacters = 24;
/** One code fits almost any layout. */
const leastRows = 2;

const unquoted = (field: string) =>
  field
    .trim()
    .replace(/^"(.*)"$/, '$1')
    .trim();

/** A known date as people type it, in the form that examples of a maker file have; what is no date stays as it is. */
function tidyDate(date: string): string {
  const plain = date
    .trim()
    .replace(/[‐-―]/g, '-')
    .replace(/-w(\d)/i, '-W$1')
    .replace(/-q(\d)/i, '-Q$1');
  const part = String.raw`\d{4}(?:-\d{2}){0,2}`;
  const ranged = plain
    .replace(new RegExp(`^(${part})\\s*(?:\\.\\.+|…|/|\\bto\\b|\\s-\\s)\\s*(${part})$`, 'i'), '$1..$2')
    .replace(/^(\d{4})-(\d{4})$/, '$1..$2');
  return readKnownDate(ranged) ?? ranged;
}

/** The dates in a text, as spans in words; null when it is no date. */
function dateWords(date: string): string | null {
  const stated = readStated(date);
  if ('unknown' in stated || stated.spans.length === 0 || stated.places.length > 0) return null;
  if (stated.spans.some(({ from, to }) => from !== null && to !== null && from > to)) return null;
  return stated.spans.map(kit.span).join(words.or);
}

/** Two dates with words or a dash between them. Only years of 1800 to 2099, so that no digits of a code are taken. */
const spacedRange =
  /\b((?:1[89]|20)\d{2}(?:-\d{2}){0,2})(?: to | ?(?:\.\.+|…) ?| [‐-―-] )((?:1[89]|20)\d{2}(?:-\d{2}){0,2})\b/i;

/** A word in small letters, as codes have none. */
const isWord = (piece: string) => /^\p{L}+\.?$/u.test(piece) && /\p{Ll}/u.test(piece);

/** Where a date begins whose last piece is known: words before it belong to it when they change what it says. */
function startOfDate(pieces: readonly string[], at: number): number {
  const plain = readKnownDate(pieces[at]!);
  let from = at;
  for (let first = at - 1; first >= 1 && isWord(pieces[first]!); first--) {
    const read = readKnownDate(pieces.slice(first, at + 1).join(' '));
    if (read !== null && read !== plain) from = first;
  }
  return from;
}

/** Code, date and country of a row: apart by tabs, semicolons, "=" or commas, else by spaces. */
function fieldsOf(line: string): string[] {
  for (const between of [/\t+/, /;/, /=|,/]) {
    const fields = line.split(between).map(unquoted);
    if (fields.length > 1) return fields;
  }
  // A code may hold spaces itself ("KV 0915 1995-01 BE"): the last piece that is a date is the date.
  const pieces = line.trim().replace(/\s+/g, ' ').replace(spacedRange, '$1..$2').split(' ');
  const at = pieces.findLastIndex((piece, place) => place > 0 && dateWords(tidyDate(piece)) !== null);
  if (at < 0) return [pieces.join(' ')];
  const from = startOfDate(pieces, at);
  const code = pieces
    .slice(0, from)
    .join(' ')
    .replace(/[\s:‐-―-]{1,40}$/, '');
  return [code, pieces.slice(from, at + 1).join(' '), pieces.slice(at + 1).join(' ')];
}

/** A country by its ISO code or its name; null when it is neither. */
function placeOf(text: string): string | null {
  const code = text.toUpperCase();
  if (isPlaceCode(code)) return code;
  const [found, ...more] = findPlaces(text);
  return found && more.length === 0 && found.words.length === text.length ? found.place : null;
}

function readRow(line: string, row: number): KnownRow {
  const fault = (problem: string): KnownRow => ({ row, text: line.trim(), known: null, problem });
  const [code = '', date = '', country = '', ...more] = fieldsOf(line);
  const signs = code.replace(/[^\p{L}\p{N}]/gu, '').length;
  if (signs === 0) return fault(words.noCode);
  if (signs > mostCharacters) return fault(words.codeTooLong(mostCharacters));
  if (date === '') return fault(words.noDate);
  if (more.some((field) => field !== '')) return fault(words.tooMany);
  const tidy = tidyDate(date);
  const dated = dateWords(tidy);
  if (dated === null) return fault(words.notDate(date));
  const place = country === '' ? null : placeOf(country);
  if (country !== '' && place === null) return fault(words.notCountry(country));
  const known = { code, reads: place === null ? tidy : `${tidy}, ${place}` };
  const says = place === null ? dated : `${dated}, ${kit.place(place)}`;
  return { row, text: line.trim(), known, says, problem: null };
}

/**
 * Reads rows of known codes as a person types or pastes them: code, date and, where known, the country. Empty lines
 * and those that begin with # are passed over. A row that is there twice would count as two witnesses, so it is a fault.
 */
export function readKnownRows(text: string): KnownRow[] {
  const first = new Map<string, number>();
  return text.split(/\r?\n/).flatMap((line, at): KnownRow[] => {
    if (line.trim() === '' || line.trimStart().startsWith('#')) return [];
    const read = readRow(line, at + 1);
    if (read.known === null) return [read];
    const key = `${read.known.code.toUpperCase()} ${read.known.reads}`;
    const same = first.get(key);
    if (same === undefined) first.set(key, at + 1);
    return same === undefined
      ? [read]
      : [{ row: at + 1, text: line.trim(), known: null, problem: words.repeats(same) }];
  });
}

/** Why these rows as a whole cannot be learned from; null when they can. */
export function wholeProblem(rows: readonly KnownRow[]): string | null {
  if (rows.length < leastRows) return words.tooFew(leastRows);
  if (rows.length > mostRows) return words.tooManyRows(mostRows);
  const faulty = rows.filter(({ problem }) => problem !== null).map(({ row }) => row);
  return faulty.length > 0 ? words.correct(faulty) : null;
}

/** Where a row stands in the text, for marking it: from its first character to after its last. */
export function rowRange(text: string, row: number): [number, number] {
  const lines = text.split('\n');
  const from = lines.slice(0, row - 1).reduce((sum, line) => sum + line.length + 1, 0);
  return [from, from + (lines[row - 1]?.length ?? 0)];
}
