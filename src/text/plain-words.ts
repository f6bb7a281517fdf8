import { tableWords, wordsOf } from './lexicon';
import { colourWords, materialWords } from './material-words';
import { phrasePattern } from './phrases';
import { accessoryWords, partWords } from './things';

let known: RegExp | null = null;

/**
 * What the piece is, how it looks, how it is sold: words that are no names. One that is missing only makes the tool hold
 * its tongue.
 */
export const plainWords = (): RegExp => {
  known ??= phrasePattern([
    ...wordsOf('plain-word', 'bag', 'piece', 'behind-new', 'new-bare'),
    ...accessoryWords,
    ...[colourWords, materialWords, partWords, tableWords('condition')].flatMap((table) => Object.values(table).flat()),
  ]);
  return known;
};
