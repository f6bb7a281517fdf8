import { isDataTerm } from '../../claim';
import { ofData, type Said, termWords } from '../data-term';
import type { Kit } from '../kit';

/**
 * "The listing says “brand new”"; what only the page's data say is told as theirs, without quotation marks: the seller
 * may never have written it.
 */
export const saying = ({ words, inData }: Said, kit: Kit): string =>
  ofData({ words, inData })
    ? `The page’s data say ${isDataTerm(words) ? termWords(words) : words}`
    : `The listing says ${kit.quote(words)}`;
