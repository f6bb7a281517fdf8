import { foldWords, type Said, sourceRange } from './fold';
import { tableWords, wordsOf } from './lexicon';
import { phraseFinder, phrasePattern } from './phrases';
import { shippingSum, sumOfShipping } from './price-words';

/** How a piece gets to the buyer. */
export interface ShippingTerms {
  kind: 'free' | 'charged' | 'pickup-only' | 'pickup-possible' | 'worldwide' | 'domestic-only' | 'stated';
}

const find = phraseFinder(tableWords('shipping'));
const stated = phrasePattern(wordsOf('shipping'), 'u');
const longest = 160;

/** Shipping statements of a text; a sentence that only names shipping is given whole, as `stated`. */
export function findShipping(text: string): Said<ShippingTerms>[] {
  const folded = foldWords(text);
  const found: Said<ShippingTerms>[] = find(folded).map(({ value, start, end, words }) => ({
    value: { kind: value },
    start,
    end,
    words,
  }));
  if (found.length > 0) return found;
  // "Ophalen of versturen voor 6,95": a verb says it where a sum follows.
  const first = [stated, shippingSum, sumOfShipping]
    .map((pattern) => folded.text.search(pattern))
    .find((at) => at >= 0);
  if (first === undefined) return [];
  const from = Math.max(
    folded.text.lastIndexOf('\n', first) + 1,
    folded.text.lastIndexOf('. ', first) + 1,
    first - longest,
    0,
  );
  const rest = folded.text.slice(first, first + longest).search(/\n|\.\s(?!\d)/u);
  const to = rest < 0 ? Math.min(folded.text.length, first + longest) : first + rest;
  const start = from + (/^\s*/.exec(folded.text.slice(from, first))?.[0].length ?? 0);
  return [{ value: { kind: 'stated' }, ...sourceRange(folded, start, to) }];
}
