import { clauseAround, foldWords, type Hit, partWords, phraseFinder } from '../listing/text';
import type { Part } from './types';

const find = phraseFinder(partWords);

/** The parts of a piece that a text names, in its order, as the text writes them. */
export const partsNamed = (text: string): Hit<Part>[] => find(foldWords(text)) as Hit<Part>[];

/**
 * The part that words of a text are most likely said of: the next one behind them in their clause, else the last one
 * before them; null where the clause names none.
 */
export function partBeside(text: string, start: number, end: number): Hit<Part> | null {
  const clause = clauseAround(text, start, end);
  const parts = partsNamed(text.slice(clause.start, clause.end));
  const behind = parts.find((part) => part.start + clause.start >= end);
  const before = parts.filter((part) => part.end + clause.start <= start);
  return behind ?? before[before.length - 1] ?? null;
}
