import {
  aheadInClause,
  behindInClause,
  clauseAround,
  phrasePattern,
  phraseTest,
  sentenceAround,
  textPattern,
  wordsOf,
} from '../text';

/* Years of the design or of all pieces of its kind, and not of this one. Common practice, no source. */

const run = phraseTest(wordsOf('model-run', 'model-noun'));
const runEnds = phraseTest(wordsOf('run-ended'));

/** "The model was made from 1985 to 2012", "this type was built until 2001": the years of all pieces of its kind. */
export const isRunOfModel = (text: string, start: number): boolean => run.test(aheadInClause(text, start));

/** "The original run ended in 1984": what became of the model in that year. */
export const isOfModelsRun = (text: string, start: number, end: number): boolean =>
  runEnds.test(aheadInClause(text, start)) || runEnds.test(behindInClause(text, end).slice(0, longestBehind));
/** Further behind its year, the end of a run is another's. */
const longestBehind = 24;

const mine = textPattern(`^[,;:\\s–-]{0,4}(?:[\\p{L}']{1,6}\\s){0,2}?(?:${phrasePattern(wordsOf('mine')).source})`);

/** "The model is of 1975, mine is younger": the year is the model's where the sentence sets the piece against it. */
export const isOfModelNotMine = (text: string, start: number, end: number): boolean =>
  run.test(aheadInClause(text, start)) && mine.test(text.slice(clauseAround(text, start, end).end));

const reissue = phraseTest(wordsOf('re-issue'));

/** "A re-issue of the basket of the 1970s": the decade is the design's. */
export function isOfReissue(text: string, start: number, end: number): boolean {
  const sentence = sentenceAround(text, start, end);
  return reissue.test(text.slice(sentence.start, sentence.end));
}
