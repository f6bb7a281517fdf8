import { withoutEnd } from './ends';
import { foldedSet, foldWords } from './fold';
import { labelOf } from './label';
import { withoutLegends } from './legend';
import { wordsOf } from './lexicon';
import { phrasePattern } from './phrases';

/*
 * Who speaks in what a page shows: only the seller's words are the seller's claims. Buyers' comments, reviews, the
 * platform's terms, a dealer's legend and other offers stand under a heading of their own; what follows it is theirs up
 * to a heading of the offer. Common practice, no source.
 */

const headings = foldedSet(wordsOf('other-voices'));
const backToSeller = foldedSet(wordsOf('sellers-part'));
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

/** "Seller: yes, KV0915 on the tab": an answer among the questions of others. */
const answer = new RegExp(`^\\s?(?:${phrasePattern(wordsOf('seller-label')).source})\\s?[:：]\\s?\\S`, 'u');
const isAnswer = (line: string): boolean => answer.test(foldWords(line.slice(0, longest)).text);

type Voice = 'seller' | 'others' | 'answer';

/** The text with all lines blank but those of one voice, so that every place in it stays what it was. */
function linesOf(voice: Voice, text: string): string {
  let others = false;
  return withoutLegends(text)
    .split('\n')
    .map((line) => {
      const answers = isAnswer(line);
      const heading = answers ? null : headingOf(line);
      if (heading) others = heading === 'others';
      const said: Voice = others ? (answers ? 'answer' : 'others') : 'seller';
      return said === voice ? line : ' '.repeat(line.length);
    })
    .join('\n');
}

/** The text with all that others say in it blank. */
export const sellersOwn = (text: string): string => linesOf('seller', text);

/** The text with all blank but what the seller answers among the questions of others. */
export const sellersAnswers = (text: string): string => linesOf('answer', text);
