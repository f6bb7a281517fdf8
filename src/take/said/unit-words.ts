import { isNegated } from '../../text';
import { tellingFinder } from '../words';
import { asFolded } from './as-folded';

/** Words for what the signs of a code write. */
export const unitWords = tellingFinder('year', 'month', 'week', 'day', 'quarter', 'plant', 'serial');

/** "An eight-digit number": the English article, and no French year. */
const englishBehind = /^\s(?:eight|eleven|older|earl|extra|add|example|identi|individ|[aeiou]\p{L}{2,9}-)/u;
/** "1995年", "12 weeks"; "since 1980 month and year" names a unit. */
const isOfFigures = (folded: string, at: number): boolean =>
  /\d\s?$/.test(folded.slice(Math.max(0, at - 2), at)) &&
  !/(?:^|\D)(?:1[6-9]|20)\d\d\s$/.test(folded.slice(Math.max(0, at - 6), at));

/** Those of them that a folded text does not deny; a "年" behind figures is a date's. */
export const unitsNamed = (folded: string): ReturnType<typeof unitWords> =>
  unitWords(asFolded(folded)).filter(
    ({ foldedStart, foldedEnd }) =>
      !isOfFigures(folded, foldedStart) &&
      !(folded.slice(foldedStart, foldedEnd) === 'an' && englishBehind.test(folded.slice(foldedEnd, foldedEnd + 14))) &&
      !isNegated(folded, foldedStart, foldedEnd),
  );
