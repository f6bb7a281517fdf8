import { type KnownCode, type KnownRow as ReadRow, readKnownList } from '../../code';
import { kit, sayKnownFault, strings } from '../../words';

const words = strings.makers.learn.rows;

/** One row as it was understood, or why it was not, in words. `row` counts the lines of the text from 1. */
export type KnownRow =
  | { row: number; text: string; known: KnownCode; says: string; problem: null }
  | { row: number; text: string; known: null; problem: string };

/** A search over more rows would keep the page waiting, and six random ones settle a layout. */
export const mostRows = 200;
/** One code fits almost any layout. */
const leastRows = 2;

function inWords(read: ReadRow): KnownRow {
  const { row, text } = read;
  if (read.known === null) return { row, text, known: null, problem: sayKnownFault(read.fault) };
  const dates = read.spans.map(kit.span).join(words.or);
  const says = read.place === null ? dates : `${dates}, ${kit.place(read.place)}`;
  return { row, text, known: read.known, says, problem: null };
}

/** The rows of known codes that a person types or pastes, each with how it is understood. */
export const readKnownRows = (text: string): KnownRow[] => readKnownList(text).map(inWords);

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
