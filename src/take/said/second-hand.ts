import { tellingFinder } from '../words';

const secondHand = tellingFinder('second-hand');

/** Whether words are of pieces that were used: their prices are not what a piece cost new. */
export const isSecondHand = (words: string): boolean => secondHand(words).length > 0;
