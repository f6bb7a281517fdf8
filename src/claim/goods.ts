import {
  aheadInClause,
  clauseBeforeComma,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  textPattern,
  wordsOf,
} from '../text';

/** What such a piece is called. */
export const bagNouns = phraseTest(wordsOf('bag'));
export const namesBag = (text: string): boolean => bagNouns.test(text);

/**
 * "Sold with a wallet of 2012", "dazu eine Geldbörse": the words that bring in another piece, up to what it is called.
 * Only with "a" or its like: "with its wallet" may be a part of the piece.
 */
const companion = textPattern(
  `(?:${phrasePattern(wordsOf('with', 'goes-along')).source})\\s(?:${phrasePattern(wordsOf('an')).source})\\s(?:[^\\s]{1,20}\\s){0,3}(?:${phrasePattern(wordsOf('bag', 'small-thing')).source})`,
);

/** "Comes with a belt, made in Spain 2015": a clause without a subject of its own goes on with that of the clause before it. */
const goesOn = textPattern(`^[\\s,]{0,3}(?:${phrasePattern(wordsOf('made-verb', 'made')).source})`);

/** "A longer strap (from a 2020 bag)": the year of the bag that gave it. */
const giver = textPattern(
  `(?:${phrasePattern(wordsOf('taken-from')).source})\\s(?:${phrasePattern(wordsOf('an')).source})\\s$`,
);
const bagBehind = textPattern(`^(?:er)?\\s(?:\\p{L}{1,15}\\s)?(?:${bagNouns.source})`);

/** Whether a year belongs to another bag that something of this one was taken from. */
export const isOfGiver = (text: string, start: number, end: number): boolean =>
  giver.test(rightAhead(text, start)) && bagBehind.test(rightBehind(text, end));

/** Whether the clause brings in another piece before the words at `start`: what follows is said of that one. */
export function isOfCompanion(text: string, start: number, end: number): boolean {
  const ahead = aheadInClause(text, start);
  if (companion.test(ahead)) return true;
  // The words may open the clause themselves: "made in Spain".
  const goes = goesOn.test(ahead + text.slice(start, end));
  const before = goes ? clauseBeforeComma(text, start - ahead.length) : null;
  return before !== null && companion.test(text.slice(before.start, before.end));
}
