import { clauseAround, phrasePattern, wordsOf } from '../text';

/** What such a piece is called. */
export const bagNouns = phrasePattern(wordsOf('bag'));

/**
 * "Sold with a wallet of 2012", "dazu eine Geldbörse": the words that bring in another piece, up to what it is called.
 * Only with "a" or its like: "with its wallet" may be a part of the piece.
 */
const companion = new RegExp(
  `(?:${phrasePattern(wordsOf('with', 'goes-along'), 'u').source})\\s(?:${phrasePattern(wordsOf('an'), 'u').source})\\s(?:[^\\s]{1,20}\\s){0,3}(?:${bagNouns.source})`,
  'u',
);

/** Whether the clause brings in another piece before the words at `start`: what follows is said of that one. */
export function isOfCompanion(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  return companion.test(text.slice(clause.start, start));
}
