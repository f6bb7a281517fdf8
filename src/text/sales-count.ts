import type { Said } from './fold';
import { wordsOf } from './lexicon';
import { anyOf, phrasePattern } from './phrases';
import { countSource, findCounts } from './said-number';

const patterns = [
  new RegExp(
    `(?<![\\d.,\\p{L}$£€])${countSource}\\s{0,2}\\+?\\s{0,2}(?:${anyOf(wordsOf('sales', 'sold-so-far'))})(?![\\p{L}])`,
    'gu',
  ),
  new RegExp(`(?:${phrasePattern(wordsOf('sales', 'number-of-sales')).source})\\s{0,2}:\\s{0,2}${countSource}`, 'gu'),
  phrasePattern(wordsOf('sales-none')),
];

/** How many pieces the seller has sold: "1,234 sales", "Verkaufte Artikel: 56"; "no sales yet" is 0. */
export const findSalesCounts = (text: string): Said<number>[] => findCounts(text, patterns);
