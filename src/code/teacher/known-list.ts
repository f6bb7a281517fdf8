import { isPlaceCode } from '../../place';
import type { Span } from '../../span';
import { findPlaces } from '../../text';
import { readStated } from '../reads';
import { type KnownCode, mostSigns } from './facts';
import { readKnownDate } from './known-date';

/** Why a row of a list is not understood. */
export type KnownFault =
  | { kind: 'no-code' }
  | { kind: 'code-too-long'; most: number }
  | { kind: 'no-date' }
  | { kind: 'not-date'; text: string }
  | { kind: 'not-place'; text: string }
  | { kind: 'too-many' }
  | { kind: 'repeats'; row: number };

/** One row as it was understood, or why it was not. `row` counts the lines of the text from 1. */
export type KnownRow = { row: number; text: string } & (
  | { known: KnownCode; spans: Span[]; place: string | null; fault: null }
  | { known: null; fault: KnownFault }
);

/** A row of more pieces than this, or a date of more characters, is prose. */
const mostPieces = 24;
const longestDate = 120;

interface Dated {
  reads: string;
  spans: Span[];
  place: string | null;
}

/** A country by its ISO code or its name; null when it is neither. */
function placeOf(text: string): string | null {
  const code = text.toUpperCase();
  if (isPlaceCode(code)) return code;
  const [found, ...more] = findPlaces(text);
  return found && more.length === 0 && found.words.length === text.length ? found.place : null;
}

/** Notes in brackets that hold no figures say nothing of the date: "1996 (my aunt's)"; a question mark in them does. */
const withoutNotes = (text: string): string => text.replace(/\s{0,4}\([^()\d?？]{0,60}\)/g, '').trim();

/** Four figures that begin lower are of a code ("KV 0915"). */
const isOfLate = ({ from, to }: Span): boolean => [from, to].every((day) => day === null || day >= earliest);
const earliest = '1800';

function datedBy(date: string, place: string | null): Dated | null {
  const reads = readKnownDate(withoutNotes(date));
  const stated = reads === null ? null : readStated(reads);
  if (reads === null || stated === null || 'unknown' in stated || !stated.spans.every(isOfLate)) return null;
  return { reads: place === null ? reads : `${reads}, ${place}`, spans: stated.spans, place };
}

/** Where a country may be set apart from a date: behind its last blank, comma or bracket, or before its first. */
function splitPlaces(text: string): [date: string, place: string][] {
  const gaps = [...text.matchAll(/[\s,(]{1,3}/g)].filter(({ index }) => index > 0).slice(0, mostPieces);
  return gaps.flatMap(({ index, 0: gap }): [string, string][] => {
    const before = text.slice(0, index);
    const behind = text.slice(index + gap.length).replace(/\)$/, '');
    return [
      [before, behind],
      [behind, before],
    ];
  });
}

/** A date, and the country where one stands beside it; null where the text is anything else. */
function readDated(text: string): Dated | null {
  if (text.length > longestDate) return null;
  for (const [date, words] of splitPlaces(text)) {
    const place = placeOf(words);
    const dated = place === null ? null : datedBy(date, place);
    if (dated) return dated;
  }
  return datedBy(text, null);
}

/** A word in small letters, or none of Latin ones: codes have neither. */
const isWord = (piece: string): boolean => /\p{Ll}/u.test(piece) || !/\p{Lu}/u.test(piece);

/** What stands between a code and its date beside blanks: a dash, a colon, an arrow, dots. */
const betweenThem = /^(?:[\s:|→>=.…,‐-―-]{1,8}|(?:is|from|dated|of)\s)+/iu;
const behindCode = /[\s:|→>=.…,‐-―-]{1,8}$/u;

/** Whether all pieces of what may be a date are words of one: capitals alone ("KV 1995") are a piece of a code. */
const mayBeDate = (pieces: readonly string[]): boolean =>
  pieces.every(
    (piece) => isWord(piece) || isPlaceCode(piece) || /^(?:Q[1-4]|W\d\d?|KW)$/.test(piece.replace(/[^\p{L}\d]/gu, '')),
  );

/** Words behind a code that are no part of it. */
const wordsBehind = /\s(\p{Ll}{2}.*)$/u;
const besideCode = (text: string): string | undefined => wordsBehind.exec(text)?.[1];

/** The row cut where all that follows is a date: a code may hold blanks itself ("KV 0915 1995-01 BE"). */
function cutAtDate(line: string): Understood | null {
  if (line.length > mostSigns + longestDate) return null;
  const pieces = [...line.matchAll(/[^\s:|→=]+/gu)];
  if (pieces.length > mostPieces) return null;
  for (const [at, piece] of pieces.entries()) {
    if (at === 0 || !mayBeDate(pieces.slice(at).map(([text]) => text))) continue;
    const code = line.slice(0, piece.index).replace(behindCode, '');
    const dated = readDated(line.slice(piece.index).replace(betweenThem, ''));
    if (dated && signsOf(code) > 0 && !wordsBehind.test(code)) return { code, dated };
  }
  return null;
}

const signsOf = (code: string): number => code.replace(/[^\p{L}\p{N}]/gu, '').length;

const unquoted = (field: string): string =>
  field
    .trim()
    .replace(/^"(.*)"$/, '$1')
    .trim();

/** The fields of a row that tabs, semicolons, "=" or commas set apart; one where nothing does. */
function fieldsOf(line: string): string[] {
  const between = [/\t+/, /;/, /=>?|,/].find((sign) => sign.test(line));
  return between ? line.split(between).map(unquoted) : [line];
}

/** Code, date and country by fields, in this order; the fault says which is none. */
function readFields([code = '', date = '', country = '', ...more]: readonly string[]): Dated | KnownFault {
  if (signsOf(code) === 0) return { kind: 'no-code' };
  if (date === '') return { kind: 'no-date' };
  const whole = readDated([date, country, ...more].filter(Boolean).join(', '));
  if (whole) return whole;
  if (more.some((field) => field !== '')) return { kind: 'too-many' };
  return datedBy(date, null) ? { kind: 'not-place', text: country } : { kind: 'not-date', text: date };
}

/** A row of a list begins with a sign or a number of its own. */
const bullet = /^\s*(?:[-*•·–]|\d{1,2}[.)])\s+(?=\S)/u;
/** "1995: KV0915". */
const dateFirst = /^([^:=,;\t]{4,40}?)(?:\s?[:=,;\t]\s?|\s[‐-―-]\s)([^:=,;\t]+)$/u;

interface Understood {
  code: string;
  dated: Dated;
}

/** Code and date in the other order, where the second is no date. */
function readDateFirst(line: string): Understood | null {
  const [, date = '', code = ''] = dateFirst.exec(line) ?? [];
  if (signsOf(code) === 0 || !/\d/.test(code) || readDated(code) !== null) return null;
  const dated = readDated(date);
  return dated && { code: code.trim(), dated };
}

function readLine(line: string): Understood | KnownFault {
  const fields = fieldsOf(line);
  const [code = ''] = fields;
  const byCut = wordsBehind.test(code) ? cutAtDate(line) : null;
  if (byCut) return byCut;
  const byFields = readFields(fields);
  if (!('kind' in byFields)) {
    const beside = besideCode(code);
    // Another date stands beside the code.
    return beside !== undefined && readDated(beside) ? { kind: 'not-date', text: beside } : { code, dated: byFields };
  }
  const read = cutAtDate(line) ?? readDateFirst(line);
  if (read || fields.length > 1) return read ?? byFields;
  // What is no part of the code was meant as a date.
  const rest = besideCode(line);
  return rest === undefined ? byFields : { kind: 'not-date', text: rest };
}

function readRow(text: string, row: number): KnownRow {
  const fault = (why: KnownFault): KnownRow => ({ row, text: text.trim(), known: null, fault: why });
  const read = readLine(text.trim().replace(bullet, ''));
  if ('kind' in read) return fault(read);
  if (signsOf(read.code) > mostSigns) return fault({ kind: 'code-too-long', most: mostSigns });
  const { reads, spans, place } = read.dated;
  return { row, text: text.trim(), known: { code: read.code, reads }, spans, place, fault: null };
}

/** A row of headings over the others: no figure stands in it. */
const isHead = (line: string): boolean => fieldsOf(line).length > 1 && !/\d/.test(line);

/**
 * Reads a list of known codes as people type or paste it: one a line, the code, its date (`readKnownDate`) and, where
 * known, the country, with tabs, semicolons, commas, "=", dashes, colons or blanks between. Empty lines, those that begin
 * with # and a row of headings at the top are passed over. A row that is there twice would count as two witnesses, so
 * it is a fault.
 */
export function readKnownList(text: string): KnownRow[] {
  const lines = text
    .split(/\r?\n/)
    .map((line, at) => ({ line, row: at + 1 }))
    .filter(({ line }) => line.trim() !== '' && !line.trimStart().startsWith('#'));
  const rows = lines.length > 1 && isHead(lines[0]!.line) ? lines.slice(1) : lines;
  const first = new Map<string, number>();
  return rows.map(({ line, row }): KnownRow => {
    const read = readRow(line, row);
    if (read.known === null) return read;
    const key = `${read.known.code.toUpperCase()} ${read.known.reads}`;
    const same = first.get(key);
    if (same !== undefined) return { row, text: read.text, known: null, fault: { kind: 'repeats', row: same } };
    first.set(key, row);
    return read;
  });
}
