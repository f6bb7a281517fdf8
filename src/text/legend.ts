import { foldWords } from './fold';
import { wordsOf } from './lexicon';
import { phrasePattern } from './phrases';

/*
 * A dealer's legend of grades ("N new, A like new, B light scratches, C …") explains letters and says nothing of the
 * piece. Only a row of labels in their order is one. Common practice, no source.
 */

/** Letters that the trade grades with, from the best down. */
const order = ['N', 'S', 'SA', 'A', 'AB', 'B', 'BC', 'C', 'CD', 'D', 'E', 'F', 'J'];
/** "A: ", "A = ", "A – ", "A comme neuf", "A美品"; a number only with a sign behind it, as things are counted without. */
const label =
  /(?<![\p{L}\p{N}])(?:([A-Z]{1,2})(?=\s?[:=：]|\s[-–—]\s|\s\p{Ll}|\s?[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}])|(\d{1,2})(?=\s?[:=：]\s?\p{L}))/gu;
/** So many labels make a legend. */
const fewest = 3;
/** How far apart the labels of one legend stand. */
const longestGrade = 80;
const closes = /[.!?。\n]/;

interface Label {
  start: number;
  end: number;
  isLetter: boolean;
  /** Its place in the order of letters, or its number. */
  rank: number;
}

/** Whether a label goes on with a row: a lower letter, or the number beside the last one, the same way. */
function goesOn(row: readonly Label[], { start, isLetter, rank }: Label): boolean {
  const [before, last] = [row.at(-2), row.at(-1)];
  if (!last || last.isLetter !== isLetter || start - last.end > longestGrade) return false;
  const step = rank - last.rank;
  return isLetter ? step > 0 : Math.abs(step) === 1 && (!before || step === last.rank - before.rank);
}

/** "Our grades: new / as new / good": what such a heading opens, up to the end of its sentence. */
const heading = new RegExp(`(?:${phrasePattern(wordsOf('grade-legend')).source})(?=\\s?[:：】\\]]|\\s[-–—]|\\n)`, 'gu');

const blank = (text: string, start: number, end: number): string =>
  text.slice(0, start) + text.slice(start, end).replace(/[^\n]/g, ' ') + text.slice(end);

function endOf(text: string, from: number, longest: number): number {
  const rest = text.slice(from, from + longest);
  const close = rest.search(closes);
  return from + (close < 0 ? rest.length : close);
}
/** No heading is followed by a longer legend. */
const longestLegend = 400;

/** The text with every legend of grades in it blank, so that each place in it stays what it was. */
export function withoutLegends(text: string): string {
  const rows: Label[][] = [];
  for (const { index, 0: words, 1: letter, 2: number } of text.matchAll(label)) {
    const isLetter = letter !== undefined;
    const rank = isLetter ? order.indexOf(letter) : Number(number);
    if (rank < 0) continue;
    const one = { start: index, end: index + words.length, isLetter, rank };
    const row = rows.at(-1);
    if (row && goesOn(row, one)) row.push(one);
    else rows.push([one]);
  }
  const legends = rows.flatMap((row) => {
    const [first, last] = [row[0], row.at(-1)];
    return first && last && row.length >= fewest
      ? [{ start: first.start, end: endOf(text, last.end, longestGrade) }]
      : [];
  });
  const { text: folded, at } = foldWords(text);
  for (const { index, 0: words } of folded.matchAll(heading)) {
    const start = at?.[index + words.length] ?? index + words.length;
    legends.push({ start, end: endOf(text, start, longestLegend) });
  }
  return legends.reduce((own, { start, end }) => blank(own, start, end), text);
}
