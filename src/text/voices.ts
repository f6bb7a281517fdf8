import { withoutEnd } from './ends';
import { foldWords } from './fold';
import { labelOf } from './label';
import { withoutLegends } from './legend';
import { wordsOf } from './lexicon';

/*
 * Who speaks in what a page shows: only the seller's words are the seller's claims. Buyers' comments, reviews, the
 * platform's terms, a dealer's legend and other offers stand under a heading of their own; what follows it is theirs up
 * to a heading of the offer. Common practice, no source.
 */

const headings = new Set(wordsOf('other-voices').map((words) => foldWords(words).text));
const backToSeller = new Set(wordsOf('sellers-part').map((words) => foldWords(words).text));
/** No heading is longer. */
const longest = 48;
/** "Comments (12)", "Reviews:". */
const ending = /[\s:：()\d]/;

const headingOf = (line: string): 'others' | 'seller' | null => {
  if (line.length > longest) return null;
  const bare = withoutEnd(line.trim(), ending);
  const { text } = foldWords(bare);
  if (headings.has(text)) return 'others';
  return backToSeller.has(text) || (bare !== '' && labelOf(bare) !== null) ? 'seller' : null;
};

/** The text with all that others say in it blank, so that every place in it stays what it was. */
export function sellersOwn(text: string): string {
  let others = false;
  return withoutLegends(text)
    .split('\n')
    .map((line) => {
      const heading = headingOf(line);
      if (heading) others = heading === 'others';
      return others ? ' '.repeat(line.length) : line;
    })
    .join('\n');
}
