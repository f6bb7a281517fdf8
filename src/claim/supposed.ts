import {
  aheadInClause,
  anyLanguage,
  behindInClause,
  jointWords,
  phrasePattern,
  phraseTest,
  sentenceAround,
  textPattern,
  topics,
  wordsOf,
} from '../text';

const supposed = phraseTest(wordsOf('supposed', 'heard'));

/** "I think it is from 1994", "supposedly relined": the sentence tells a guess or hearsay. */
export function isSupposed(text: string, start: number, end: number): boolean {
  const sentence = sentenceAround(text, start, end);
  return supposed.test(text.slice(sentence.start, sentence.end));
}

const heard = phraseTest(wordsOf('heard'));
const told = phraseTest(wordsOf('told-me'));
/** Whether words say that somebody told the seller something: "the shop told me". */
export const saysTold = (words: string): boolean => told.test(words);
/** "My husband says", "mon mari dit", "主人は…と言います": what somebody near the seller holds. */
const kinSays = textPattern(
  `(?:${phraseTest(wordsOf('possessive')).source})\\s\\p{L}{2,15}\\s(?:${anyLanguage(jointWords.holds)})(?!\\p{L})`,
);
/** "The lady I had it from thought", "la señora del rastro decía". */
const personSays = textPattern(
  `(?:${phraseTest(wordsOf('others-kin', 'family', 'somebody')).source})(?:\\s[\\p{L}']{1,12}){0,5}\\s(?:${anyLanguage(jointWords.holds)})(?!\\p{L})`,
);
/** "Laut meiner Tante", "volgens mijn zus", "義母によると": what "the stamp" tells is written there. */
const byPerson = textPattern(
  `(?:${phrasePattern(wordsOf('hearsay')).source})\\s(?:d[ie]\\s)?(?:${phrasePattern(wordsOf('article', 'possessive')).source})\\s?[\\p{L}-]{2,20}|[^。、「」]{1,12}(?:${phrasePattern(topics.hearsay.ja).source})`,
);
const saidBehind = /^[^。、]{0,8}と(?:言|い[いう]|話|思って)/u;
/** A label, a stamp or a paper tells what stands on it. */
const written = phraseTest(wordsOf('code-noun', 'code-cue', 'inside-the-piece', 'paper-or-key', 'comes-along'));

/**
 * Whether words are what somebody else told: "I was told it is from 1988", "1988, my aunt always said". Nobody here
 * states it, so it judges nothing.
 */
export function isHearsay(text: string, start: number, end: number): boolean {
  const [ahead, behind] = [aheadInClause(text, start), behindInClause(text, end)];
  if (heard.test(ahead + text.slice(start, end) + behind) || saidBehind.test(behind)) return true;
  return [told, kinSays, personSays, byPerson].some((says) => says.test(ahead)) && !written.test(ahead);
}
