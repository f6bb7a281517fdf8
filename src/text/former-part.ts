import { clauseAround, sentenceAround } from './clause';
import { wordsOf } from './lexicon';
import { phrasePattern, phraseTest } from './phrases';

/*
 * What is told of a part that is not there any more: "the old one was torn", "strap replaced in 2018, the original
 * broke", "handle redone because it had cracked". None of it is said of the piece. Common practice, no source.
 */

const nouns = phrasePattern(wordsOf('bag', 'piece', 'behind-new')).source;
/** "The old bag" is the piece. */
const withoutNoun = (words: string[]) =>
  new RegExp(`(?:${phrasePattern(words).source})(?!\\s(?:\\p{L}{1,12}\\s)?(?:${nouns}))`, 'u');
const oldOne = withoutNoun(wordsOf('old-one'));
const formerOne = withoutNoun(wordsOf('former-one'));
const reason = phraseTest(wordsOf('because'));
const repaired = phraseTest(wordsOf('replaced', 'new-before-part', 'new-behind-part'));
/** How far ahead of a sentence the repair may stand that it goes on of. */
const reach = 80;

/** Whether the words from `start` to `end` (folded text) are said of a part that was replaced. */
export function isOfFormerPart(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  const before = text.slice(clause.start, start);
  if (oldOne.test(before)) return true;
  const sentence = sentenceAround(text, start, end);
  if (formerOne.test(before)) return repaired.test(text.slice(Math.max(0, sentence.start - reach), sentence.end));
  return reason.test(before) && repaired.test(text.slice(sentence.start, sentence.end));
}
