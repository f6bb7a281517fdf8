import { type FoundDate, phrasePattern, textPattern, wordsOf } from '../text';
import { tellsMaking } from './making';

/** Not "70er/80er": decades are as coarse as they are said. "1990 to 2019" names both years. */
export const isExplicitRange = ({ form, span, words }: FoundDate) =>
  form === 'range' && !span.about && (/9\D*$/u.test(words) || !(span.from?.[3] === '0' && span.to?.[3] === '9'));
/** No piece is made over so many years: they are a model's, an owner's, a house's. */
const longestMaking = 12;
const longestOfCode = 4;
const rangeOpens = textPattern(`(?:${phrasePattern(wordsOf('range-opens')).source})\\s?$`);

const yearOf = (day: string): number => Number(day.slice(0, 4));

/** "Made between 1990 and 1994"; years from and to that nothing says to be of the making are of something that lasted. */
export function isMadeWithin({ span, start, end }: FoundDate, before: string, after: string): boolean {
  if (span.from === null || span.to === null) return tellsMaking.test(before);
  const years = yearOf(span.to) - yearOf(span.from);
  if (years > longestMaking) return false;
  // "B1042173, so 2002-2004": what a table tells of a code.
  if (years <= longestOfCode && !rangeOpens.test(before)) return true;
  return tellsMaking.test(before) || tellsMaking.test(after) || before.trim() === '' || end - start <= longestBare;
}
/** "1990-94", "1990/1994": written as a date of making is. */
const longestBare = 9;
