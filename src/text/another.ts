import { type Topic, wordsOf } from './lexicon';
import { phrasePattern } from './phrases';

/*
 * Of what thing a sentence speaks at one place, after ConText (Harkema et al., J Biomed Inform 42(5), 2009, 839-851): a
 * trigger brings in another thing, and what follows it is said of that thing until words for this piece bring the
 * sentence back. Triggers are lists of ours by language. Common practice, no source.
 */

const sourceOf = (...topics: Topic[]) => phrasePattern(wordsOf(...topics), 'u').source;
/** "My sister's is of 1986 and has pigskin, mine cotton". */
const anothers = new RegExp(sourceOf('anothers-piece'), 'gu');
const back = new RegExp(sourceOf('this-one', 'mine'), 'gu');
const lastEnd = (pattern: RegExp, text: string, from = 0): number => {
  let last = -1;
  for (const match of text.matchAll(pattern)) if (match.index >= from) last = match.index + match[0].length;
  return last;
};

/** Whether the words of a sentence ahead of a place speak of somebody's other piece there, and not of this one again. */
export function isOfAnothersPiece(ahead: string): boolean {
  const other = lastEnd(anothers, ahead);
  return other >= 0 && lastEnd(back, ahead, other) < 0;
}

/** Whether a sentence has spoken of somebody's other piece so far. */
export const namesAnothersPiece = (ahead: string): boolean => lastEnd(anothers, ahead) >= 0;
