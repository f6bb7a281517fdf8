import { wordsOf } from '../text';

/** "And" in each language that parts words by gaps, as alternatives of a pattern over a text as it is written. */
export const andWords = wordsOf('and')
  .filter((word) => /^\p{Script=Latin}/u.test(word))
  .sort((a, b) => b.length - a.length)
  .join('|');
