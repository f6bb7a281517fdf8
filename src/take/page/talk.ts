import { isLabel } from '../said/label';
import { isPeriod } from '../said/used-text';
import { type Cell, textOfCell, wordsOfRows } from './grid';
import type { Inline } from './inline';

const longestCell = 110;
const sentenceEnd = /[.!?。！？](?:\s|$)/u;

/** Whether a text is what people say in sentences, and no cell of a table. */
const isSpeech = (text: string): boolean => text.length > longestCell || /[.!?]\s{1,3}[¿¡]?\p{Lu}/u.test(text);

/**
 * The words of a table that only lays out a talk: a writer at the side and a contribution beside, without heads. Null where
 * it holds data: what opens a row of it is a period, a code or a label.
 */
export function talkIn(rows: readonly Cell[][]): Inline[] | null {
  if (rows.length < 2 || rows.some((row) => row.length > 3 || row.some(({ head }) => head))) return null;
  const last = rows.map((row) => textOfCell(row.at(-1)));
  const spoken = last.filter((text) => isSpeech(text) && sentenceEnd.test(text)).length;
  const opens = rows.map(([first]) => textOfCell(first));
  const named = opens.filter((text) => isPeriod(text) || isLabel(text) || /^[A-Z0-9 ]{1,5}$/.test(text)).length;
  if (spoken < rows.length * 0.5 || named > 0) return null;
  return wordsOfRows(rows);
}
