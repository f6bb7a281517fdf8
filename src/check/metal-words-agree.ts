import { defineCheck, practice } from './frame';
import { platedMetalWords, solidMetalWords } from './material-words';
import { askPhoto, quote } from './wording';
import { firstWords, listingText } from './words';

export const metalWordsAgree = defineCheck({
  id: 'metal-words-agree',
  family: 'materials',
  title: 'The words for the metal agree',
  failureTitle: 'The listing calls the metal both solid and plated',
  kinds: ['doubt'],
  basis: 'Metal is solid or plated; solid brass neither flakes nor needs a “tone”.',
  innocent: 'Buckles and zips may be of different metals.',
  settles: 'A close photo of the metal where it is worn.',
  source: practice,
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const text = listingText(listing);
    const solid = firstWords(text, solidMetalWords);
    const plated = firstWords(text, platedMetalWords);
    if (!solid || !plated) return [];
    const ask = askPhoto('part-hardware', 'Could you add a close photo of the metal parts where they are most worn?');
    return [{ kind: 'doubt', statement: `The listing says ${quote(solid)} and also ${quote(plated)}.`, asks: [ask] }];
  },
});
