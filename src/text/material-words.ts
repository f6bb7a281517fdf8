import { tableWords, wordsOf } from './lexicon';
import type { PhraseTable } from './phrases';

/*
 * Colours and materials under their English name, which is what maker files are written in. What a metal's surface is,
 * and that something only looks like leather, are claims of their own: their words stand there.
 */

export const colourWords: PhraseTable<string> = {
  ...tableWords('colour'),
  'gold-tone': wordsOf('gold-surface'),
  'silver-tone': wordsOf('silver-surface'),
};

const materials = tableWords('material');
export const materialWords: PhraseTable<string> = {
  ...materials,
  'imitation leather': [...materials['imitation leather'], ...wordsOf('leather-like')],
  brass: [...materials.brass, ...wordsOf('brass-solid')],
};
