import { clauseAround, phrasePattern, wordsOf } from '../text';

/** What such a piece is called. */
export const bagNouns = phrasePattern(wordsOf('bag'));

/**
 * "Sold with a wallet of 2012", "dazu eine Geldbörse": the words that bring in another piece, up to what it is called.
 * Only with "a" or its like: "with its wallet" may be a part of the piece.
 */
const companion = new RegExp(
  `(?:${phrasePattern(wordsOf('with', 'goes-along')).source})\\s(?:${phrasePattern(wordsOf('an')).source})\\s(?:[^\\s]{1,20}\\s){0,3}(?:${phrasePattern(wordsOf('bag', 'small-thing')).source})`,
  'u',
);

/** "Comes with a belt, made in Spain 2015": a clause without a subject of its own goes on with that of the clause before it. */
const goesOn = new RegExp(`^[\\s,]{0,3}(?:${phrasePattern(wordsOf('made-verb', 'made')).source})`, 'u');

/** Whether the clause brings in another piece before the words at `start`: what follows is said of that one. */
export function isOfCompanion(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  const own = text.slice(clause.start, start);
  if (companion.test(own)) return true;
  // The words may open the clause themselves: "made in Spain".
  if (
    !goesOn.test(text.slice(clause.start, end)) ||
    !/,\s{0,2}$/u.test(text.slice(Math.max(0, clause.start - 3), clause.start + 1))
  )
    return false;
  const before = clauseAround(text, clause.start - 2, clause.start - 2);
  return companion.test(text.slice(before.start, before.end));
}
