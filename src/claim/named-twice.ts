import {
  anyLanguage,
  foldWords,
  isPlaceName,
  jointWords,
  phrasePattern,
  rightAhead,
  rightBehind,
  textPattern,
  wordsOf,
} from '../text';
import type { Passage } from './passage';

const bag = `${phrasePattern(wordsOf('bag', 'kind-of-piece')).source}|(?:${anyLanguage(jointWords.trunk)})(?!\\p{L})`;
const bagBehind = textPattern(`^\\s(?:${bag})`);
/** "It is a Pellowe, made in England". */
const isOneAhead = textPattern(
  `(?:^|\\s)(?:${phrasePattern(wordsOf('is')).source})\\s(?:${phrasePattern(wordsOf('an')).source})\\s$`,
);
const closes = /^\s?(?:[,.;!]|$)/;
const bagInTitle = textPattern(`(?:${bag})`);
/** "[FS] Corvane tote". */
const tagAhead = /^\s?\[[^\]\n]{1,12}\]\s/;
/** A word in small letters, so that a capital behind it is the name's own. */
const withinSentence = /\p{Ll},?\s$/u;
const oneName = /^\p{Lu}[\p{Ll}'’-]{3,24}$/u;
/** Places of a word that are looked at; a text that is full of it says no more. */
const mostPlaces = 20;

/**
 * "Corvane navy tote", and "a roomy Corvane tote" in the text: an unknown word at the head of a title may be any word
 * there, but one that keeps its capital within a sentence, right before the bag, is a name. Where it stands in the text.
 */
export function namedTwice(
  title: Passage,
  unknown: string,
  passages: readonly Passage[],
): { from: Passage; name: string; start: number; end: number } | null {
  const named = title.text.replace(tagAhead, '');
  const behind = named.startsWith(unknown) ? foldWords(named.slice(unknown.length)).text : '';
  if (!oneName.test(unknown) || !bagInTitle.test(behind) || isPlaceName(unknown)) return null;
  for (const from of passages.filter((one) => one !== title)) {
    let start = from.text.indexOf(unknown);
    for (let count = 0; start >= 0 && count < mostPlaces; count += 1) {
      const end = start + unknown.length;
      const [ahead, behind] = [rightAhead(from.text, start), foldWords(rightBehind(from.text, end)).text];
      const isOne = closes.test(behind) && isOneAhead.test(foldWords(ahead).text);
      if (withinSentence.test(ahead) && (isOne || bagBehind.test(behind))) return { from, name: unknown, start, end };
      start = from.text.indexOf(unknown, end);
    }
  }
  return null;
}
