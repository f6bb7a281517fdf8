import { foldWords } from '../../text';
import { type Cell, textOfCell } from '../page/grid';
import { wholeWords } from '../words';

const words = wholeWords('ditto');
const marks = /^(?:["“”„〃″]|''|,,|-\s?["“”]\s?-)$/u;
const isDitto = (text: string): boolean => marks.test(text) || words.has(foldWords(text.replace(/[()]/g, '')).text);

/** Rows with each "dto.", "idem" or mark that says so in place of the cell above it. */
export function withoutDitto(rows: readonly Cell[][]): Cell[][] {
  const whole: Cell[][] = [];
  for (const row of rows) {
    const above = whole.at(-1);
    whole.push(
      row.map((cell, column) => {
        const before = above?.[column];
        const stands = before !== undefined && !before.head && before.words !== null;
        return stands && isDitto(textOfCell(cell)) ? { ...cell, words: before.words } : cell;
      }),
    );
  }
  return whole;
}
