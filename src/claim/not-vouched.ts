import {
  anyLanguage,
  anyOf,
  type Folded,
  type Hit,
  jointWords,
  phrasePattern,
  rightAhead,
  rightBehind,
  sourceRange,
  Taken,
  tableWords,
  textPattern,
  topicFinder,
  topics,
  wordsOf,
} from '../text';
import { partBeside } from './parts';
import type { ClaimDraft, Passage } from './passage';
import { saidWords } from './said-words';

const { behindDoubt, doubtOpens, youWord } = jointWords;

const findPhrases = topicFinder('not-vouched');
const materials = phrasePattern([
  ...wordsOf('leather', 'leather-like'),
  ...Object.values(tableWords('material')).flat(),
]).source;
const ofMaterial = textPattern(`^[\\s-]{0,2}(?:${materials})`);
const ofElse = textPattern(`${materials}|${phrasePattern(wordsOf('code-noun')).source}`);

/** Words of one topic in all languages but Japanese, which sets what is doubted before the doubt. */
function european(topic: 'cannot-say' | 'by-the-maker'): string {
  const { ja: _, ...others } = topics[topic];
  return phrasePattern(Object.values(others).flat()).source;
}
const gap = '[\\s,:"]{1,3}';
const words = (most: number) => `${gap}(?:[\\p{L}\\d'’]{1,14}${gap}){0,${most}}?`;
/** "The original price", "a real bargain": before a noun the words say what that one is. */
const noNoun = `(?=\\s{0,2}(?:$|[.,;:!?)\\n…–—-]|(?:${phrasePattern(wordsOf('but', 'and', 'because', 'is')).source}|${anyLanguage(behindDoubt)})(?!\\p{L})))`;
const together = new RegExp(
  [
    `(?:${european('cannot-say')})${words(5)}(?:${european('by-the-maker')})${noNoun}`,
    `(?:(?:${phrasePattern([...wordsOf('whether'), ...doubtOpens.filter(Boolean)]).source})\\s(?:[\\p{L}']{1,14}\\s){0,3}?)?(?:${european('by-the-maker')})${words(3)}(?:${european('cannot-say')})`,
    `(?:${anyOf(topics['by-the-maker'].ja)})[^。、\\n]{0,10}?(?:${anyOf(topics['cannot-say'].ja)})`,
  ].join('|'),
  'gu',
);
/** "If you are not sure it is real, have it looked at": advice, which says nothing of the piece. */
const toReader = textPattern(`(?:^|[^\\p{L}])(?:${anyLanguage(youWord)})\\s(?:[\\p{L}']{1,12}\\s){0,2}$`);

/** Doubt and what is doubted, together in one clause: "weiß nicht, ob die echt ist", "no guarantee that it's authentic". */
function findTogether(folded: Folded): Hit<'not-vouched'>[] {
  return [...folded.text.matchAll(together)].flatMap((match) => {
    const [foldedStart, foldedEnd] = [match.index, match.index + match[0].length];
    // Said of the leather, a part or the code.
    if (ofElse.test(match[0]) || partBeside(match[0], match[0].length, match[0].length)) return [];
    if (toReader.test(rightAhead(folded.text, foldedStart))) return [];
    return [{ value: 'not-vouched', foldedStart, foldedEnd, ...sourceRange(folded, foldedStart, foldedEnd) }];
  });
}

function find(folded: Folded): Hit<'not-vouched'>[] {
  // "Not sure if it is real leather" is said of the material.
  const phrases = findPhrases(folded).filter(({ foldedEnd }) => !ofMaterial.test(rightBehind(folded.text, foldedEnd)));
  const taken = new Taken(folded.text.length);
  for (const { foldedStart, foldedEnd } of phrases) taken.take(foldedStart, foldedEnd);
  const apart = findTogether(folded).filter(({ foldedStart, foldedEnd }) => !taken.overlaps(foldedStart, foldedEnd));
  return [...phrases, ...apart];
}

/** What says that the seller does not know, or will not say, whether the piece is the named maker's. */
export const notVouched = (from: Passage): ClaimDraft[] =>
  saidWords(from, find).map(({ polarity, said }): ClaimDraft => ({ kind: 'not-vouched', polarity, ...said }));
