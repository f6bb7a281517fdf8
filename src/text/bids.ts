import type { Said } from './fold';
import { wordsOf } from './lexicon';
import { anyOf, phrasePattern } from './phrases';
import { countSource, findCounts } from './said-number';

const patterns = [
  new RegExp(`(?<![\\d.,\\p{L}$£€])${countSource}\\s{0,2}(?:${anyOf(wordsOf('bids', 'bidders'))})(?![\\p{L}])`, 'gu'),
  new RegExp(`(?:${phrasePattern(wordsOf('bids', 'number-of-bids')).source})\\s{0,2}[:(]\\s{0,2}${countSource}`, 'gu'),
  phrasePattern(wordsOf('bids-none')),
];

/** Number of bids shown: "7 bids", "Gebote: 3"; "no bids yet" is 0. */
export const findBids = (text: string): Said<number>[] => findCounts(text, patterns);
