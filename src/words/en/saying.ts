import { isDataTerm } from '../../claim';
import { termWords } from '../data-term';
import type { Kit } from '../kit';

/**
 * "The listing says “brand new”"; what only the page's data say is told as theirs, without quotation marks: the seller
 * may never have written it.
 */
export const saying = ({ words, inData }: { words: string; inData: boolean }, kit: Kit): string =>
  inData || isDataTerm(words)
    ? `The page’s data say ${isDataTerm(words) ? termWords(words) : words}`
    : `The listing says ${kit.quote(words)}`;
