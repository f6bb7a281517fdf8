import {
  clauseAround,
  isOnlySeeming,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  sentenceAround,
  textPattern,
  wordsOf,
} from '../text';
import { opensQuote } from './code-at';

/*
 * "KV0915, not KV0951", "I first wrote KV0951": what a seller corrects is said of nothing. Common practice, no source.
 */

const notAhead = textPattern(
  `(?:${phrasePattern(wordsOf('negation')).source})\\s(?:(?:${phrasePattern(wordsOf('article')).source})\\s)?${opensQuote}?\\s?$`,
);
const notBehind = /^[」』"'»]?\s?(?:では|じゃ)な/u;
const wrote = phraseTest(wordsOf('misread-before'));

/** Whether the words from `start` to `end` are named as what was read or written wrongly. */
export function isCorrected(text: string, start: number, end: number): boolean {
  if (notAhead.test(rightAhead(text, start)) || notBehind.test(rightBehind(text, end))) return true;
  const clause = clauseAround(text, start, end);
  return wrote.test(text.slice(clause.start, clause.end)) || isOnlySeeming(text, start, end);
}

interface At {
  start: number;
  code: string;
}

/** The codes that stand: without those that their own sentence, or the one beside it, puts another one in place of. */
export function withoutTakenBack<T extends At>(text: string, found: readonly T[]): T[] {
  const corrected = new Set(found.filter(({ start, code }) => isCorrected(text, start, start + code.length)));
  const isReplaced = (one: T): boolean => {
    const { start, end } = sentenceAround(text, one.start, one.start + one.code.length);
    return found.some(
      (other) => !corrected.has(other) && other.start >= start - nextSentence && other.start <= end + nextSentence,
    );
  };
  return found.filter((one) => !corrected.has(one) || !isReplaced(one));
}
/** How far beyond its sentence the right one may stand. */
const nextSentence = 80;
