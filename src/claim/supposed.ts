import { phraseTest, sentenceAround, wordsOf } from '../text';

const supposed = phraseTest(wordsOf('supposed'));

/** "I think it is from 1994", "supposedly relined": the sentence tells a guess or hearsay. */
export function isSupposed(text: string, start: number, end: number): boolean {
  const sentence = sentenceAround(text, start, end);
  return supposed.test(text.slice(sentence.start, sentence.end));
}
