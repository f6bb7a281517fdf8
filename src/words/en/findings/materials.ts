import type { WordsFor } from '../../finding-words';

export const materials: WordsFor<'leather-words-agree' | 'metal-words-agree'> = {
  'leather-words-agree': {
    title: 'The words for the leather agree',
    failureTitle: 'The listing says both leather and a leather-like material',
    rule: 'A surface is leather or a material made to look like it, not both.',
    statement: ({ leather, other }, kit) => `The listing says ${kit.quote(leather)} and also ${kit.quote(other)}.`,
    innocent: 'Body and lining or strap may be of different materials.',
    settles: 'Which part is of which material, with a photo of a raw edge.',
  },
  'metal-words-agree': {
    title: 'The words for the metal agree',
    failureTitle: 'The listing gives two metals for the same part that exclude each other',
    rule: 'A part of solid gold or silver is neither plated nor of that tone only, and no solid metal is a zinc alloy. Solid brass may be plated.',
    statement: ({ solid, other, part }, kit) =>
      `The listing says ${kit.quote(solid)} and also ${kit.quote(other)} of the ${part ?? 'metal'}.`,
    innocent: 'The words may be meant of different buckles, rivets or zips.',
    settles: 'A close photo of the metal where it is worn.',
  },
};
