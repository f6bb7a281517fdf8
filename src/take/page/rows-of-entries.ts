import { withoutPeriods } from '../said/used-text';
import type { Cell } from './grid';
import { type Inline, partOf } from './inline';

/** What parts the pieces of an entry: signs that hardly do anything else, then those that also stand within one. */
const marks = [/\s?[·•|｜]\s?/gu, /\s[–—-]\s|\s?[:：;；]\s|\s?[；：]/gu, /,\s|、/gu];
const mostPieces = 6;
/** A longer one is prose. */
const longestEntry = 300;

/** The pieces of an entry; a sign within a period parts none. */
function piecesBy(mark: RegExp, words: Inline): Inline[] {
  const { periods } = withoutPeriods(words.text);
  const cuts = [...words.text.matchAll(mark)].filter(
    ({ index, 0: sign }) => !periods.some(({ start, end }) => index >= start && index + sign.length <= end),
  );
  const starts = [0, ...cuts.map(({ 0: sign, index }) => index + sign.length)];
  const ends = [...cuts.map(({ index }) => index), words.text.length];
  return starts.map((start, at) => partOf(words, start, ends[at]!));
}

const cellOf = (words: Inline): Cell => ({
  words: words.text.trim() === '' ? null : words,
  head: false,
  own: true,
  span: 1,
});

/** Entries that the same sign parts into as many pieces each, as the rows of a table without heads; null where none does. */
export function rowsOfEntries(entries: readonly Inline[]): Cell[][] | null {
  if (entries.length < 2 || entries.some(({ text }) => text.length > longestEntry)) return null;
  for (const mark of marks) {
    const rows = entries.map((words) => piecesBy(mark, words));
    const width = rows[0]!.length;
    if (width > 1 && width <= mostPieces && rows.every((row) => row.length === width))
      return rows.map((row) => row.map(cellOf));
  }
  return null;
}
