import { tableWords, wordsOf } from './lexicon';

/** Words for the parts of a leather piece. */
export const partWords = tableWords('part');

/** Things that come with a piece or stand beside it; what is said of them is not said of it. */
export const accessoryWords = wordsOf('comes-along', 'paper-or-key', 'photograph', 'beside-the-piece');
