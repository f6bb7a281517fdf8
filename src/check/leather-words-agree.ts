import { practice } from './frame';
import { leatherWords, notLeatherWords } from './material-words';
import { askPhoto, quote } from './wording';
import { firstWords, listingText } from './words';
import { defineWritten } from './written';

export const leatherWordsAgree = defineWritten({
  id: 'leather-words-agree',
  family: 'materials',
  title: 'The words for the leather agree',
  failureTitle: 'The listing says both leather and a leather-like material',
  kinds: ['doubt'],
  basis: 'A surface is leather or a material made to look like it, not both.',
  innocent: 'Body and lining or strap may be of different materials.',
  settles: 'Which part is of which material, with a photo of a raw edge.',
  source: practice,
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const text = listingText(listing);
    const leather = firstWords(text, leatherWords);
    const other = firstWords(text, notLeatherWords);
    if (!leather || !other) return [];
    const ask = askPhoto(
      'leather',
      'Which parts are leather and which are not? A photo of a raw edge would show it well.',
    );
    return [{ kind: 'doubt', statement: `The listing says ${quote(leather)} and also ${quote(other)}.`, asks: [ask] }];
  },
});
