import { isDataTerm } from '../claim';

/** "https://schema.org/MerchantReturnNotPermitted" as "merchant return not permitted": a term of the page's data in words. */
export const termWords = (term: string): string =>
  term
    .replace(/^.*[/#:]/, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();

/** What is said of a piece; `inData` where only the page's data say it. */
export interface Said {
  words: string;
  inData: boolean;
}

/** Whether only the page's data say it: the seller may never have written it, so it is not quoted. */
export const ofData = ({ words, inData }: Said): boolean => inData || isDataTerm(words);
