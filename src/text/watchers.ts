import type { Said } from './fold';
import { wordsOf } from './lexicon';
import { anyOf, phrasePattern } from './phrases';
import { countSource, findCounts } from './said-number';

const patterns = [
  new RegExp(
    `(?<![\\d.,\\p{L}])${countSource}\\s{0,2}\\+?\\s{0,2}(?:(?:${anyOf(wordsOf('people-counted'))}) )?(?:${anyOf(wordsOf('watchers', 'watched-by'))})`,
    'gu',
  ),
  new RegExp(
    `(?:${phrasePattern(wordsOf('watchers', 'watch-count')).source})\\s{0,2}[:(]?\\s{0,2}${countSource}`,
    'gu',
  ),
];

/** How many people watch or marked the listing: "12 watchers", "Beobachter: 4", "いいね 35". */
export const findWatchers = (text: string): Said<number>[] => findCounts(text, patterns);
