import { isNegated } from '../../text';
import { tellingFinder } from '../words';
import { asFolded } from './as-folded';

/** Words for what the signs of a code write. */
export const unitWords = tellingFinder('year', 'month', 'week', 'day', 'quarter', 'plant', 'serial');

/** Those of them that a folded text does not deny; a "年" behind figures is a date's. */
export const unitsNamed = (folded: string): ReturnType<typeof unitWords> =>
  unitWords(asFolded(folded)).filter(
    ({ foldedStart, foldedEnd }) =>
      !/\d\s?$/.test(folded.slice(Math.max(0, foldedStart - 2), foldedStart)) &&
      !isNegated(folded, foldedStart, foldedEnd),
  );
