import {
  foldWords,
  isPlaceName,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  textPattern,
  wordsOf,
} from '../text';
import type { Passage } from './passage';

const bag = phrasePattern(wordsOf('bag', 'kind-of-piece')).source;
const bagBehind = textPattern(`^\\s(?:${bag})`);
const bagInTitle = phraseTest(wordsOf('bag', 'kind-of-piece'));
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
  const behind = title.text.startsWith(unknown) ? foldWords(title.text.slice(unknown.length)).text : '';
  if (!oneName.test(unknown) || !bagInTitle.test(behind) || isPlaceName(unknown)) return null;
  for (const from of passages.filter((one) => one !== title)) {
    let start = from.text.indexOf(unknown);
    for (let count = 0; start >= 0 && count < mostPlaces; count += 1) {
      const end = start + unknown.length;
      if (
        withinSentence.test(rightAhead(from.text, start)) &&
        bagBehind.test(foldWords(rightBehind(from.text, end)).text)
      )
        return { from, name: unknown, start, end };
      start = from.text.indexOf(unknown, end);
    }
  }
  return null;
}
