import { isNegated } from './clause';
import { foldWords, type Said } from './fold';
import { tableWords } from './lexicon';
import { phraseFinder } from './phrases';

const find = phraseFinder(tableWords('payment'));

/** Payment ways that a text accepts; refused ones ("no cheques") are left out. */
export function findPayment(text: string): Said<string>[] {
  const folded = foldWords(text);
  return find(folded)
    .filter((hit) => !isNegated(folded.text, hit.foldedStart, hit.foldedEnd))
    .map(({ value, start, end, words }) => ({ value, start, end, words }));
}
