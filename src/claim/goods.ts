import { clauseAround, phrasePattern, wordsOf } from '../text';

/** What such a piece is called. */
export const bagNouns = phrasePattern(wordsOf('bag'));
export const namesBag = (text: string): boolean => text.search(bagNouns) >= 0;

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

/** "A longer strap (from a 2020 bag)": the year of the bag that gave it. */
const giver = new RegExp(
  `(?:${phrasePattern(wordsOf('taken-from')).source})\\s(?:${phrasePattern(wordsOf('an')).source})\\s$`,
  'u',
);
const bagBehind = new RegExp(`^(?:er)?\\s(?:\\p{L}{1,15}\\s)?(?:${bagNouns.source})`, 'u');

/** Whether a year belongs to another bag that something of this one was taken from. */
export const isOfGiver = (text: string, start: number, end: number): boolean =>
  giver.test(text.slice(Math.max(0, start - 40), start)) && bagBehind.test(text.slice(end, end + 40));

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
