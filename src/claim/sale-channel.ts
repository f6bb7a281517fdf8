import {
  aheadInSentence,
  anyLanguage,
  behindInSentence,
  jointWords,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  sentenceAround,
  textPattern,
  topicFinder,
  wordsOf,
  wordsWithout,
} from '../text';
import { namesBag } from './goods';
import { type ClaimDraft, type Passage, saidIn } from './passage';
import { isHearsay } from './supposed';
import { isUnsaid } from './unsaid';

/** How the seller says the piece was first sold. Only purchase from the maker counts as "discount", not this offer's own reduction. */
const find = topicFinder('discount', 'outlet', 'sample-sale', 'seconds');

const bought = phraseTest(wordsWithout(wordsOf('bought'), 'shop', 'outlet', 'sample-sale'));
const otherGoods = phraseTest(wordsOf('small-thing'));
/** "There was an outlet next door where I got the shoes": what the rest of the sentence names was bought there. */
function isOfOtherGoods(text: string, start: number, end: number): boolean {
  const [ahead, behind] = [aheadInSentence(text, start), behindInSentence(text, end)];
  return otherGoods.test(behind) && !namesBag(ahead + behind.replace(otherGoods, '')) && !bought.test(ahead);
}

const ofMine = textPattern(
  `^\\s(?:\\p{L}{1,4}\\s){0,2}?(?:(?:${phrasePattern(wordsOf('possessive')).source})\\s|(?:${anyLanguage(jointWords.wardrobe)})(?!\\p{L}))`,
);
const isThere = textPattern(
  `(?:(?:^|[^\\p{L}])(?:${anyLanguage(jointWords.nearby)})|${phrasePattern(wordsOf('there-are')).source})[\\s']?(?:\\p{L}{1,4}[\\s']){0,2}$`,
);
/** "Near the outlet we can meet", "clearance of my wardrobe": such a place or sale is named, and nothing was bought there. */
function isOnlyNamed(text: string, start: number, end: number): boolean {
  const sentence = sentenceAround(text, start, end);
  if (bought.test(text.slice(sentence.start, sentence.end))) return false;
  return isThere.test(rightAhead(text, start)) || ofMine.test(rightBehind(text, end));
}

/** Discount, outlet, sample-sale and factory-second claims; "not from an outlet" is none. */
export function saleChannelClaims(passages: Passage[]): ClaimDraft[] {
  return passages.flatMap((from) =>
    find(from.folded).flatMap((hit): ClaimDraft[] => {
      const { text } = from.folded;
      const [start, end] = [hit.foldedStart, hit.foldedEnd];
      if (isUnsaid(text, start, end) || isHearsay(text, start, end)) return [];
      if (isOnlyNamed(text, start, end) || isOfOtherGoods(text, start, end)) return [];
      // "Sample" alone is also a fabric sample or a sample photo; it has to be the piece's kind.
      if (hit.words.toLowerCase() === 'sample' && !/^\s(?:piece|bag|item)/.test(rightBehind(text, end))) return [];
      return [{ kind: 'sale-channel', channel: hit.value, ...saidIn(from, hit, 0.85) }];
    }),
  );
}
