import type { Condition } from '../listing/types';
import { practice } from './frame';
import { noWearWords, wearWords } from './text-words';
import { askPhoto, quote, saying } from './wording';
import { allWords, listingText } from './words';
import { defineWritten, type WrittenSpeech } from './written';

const fresh: Condition[] = ['new', 'unused'];
const ask = askPhoto('condition', 'Could you describe every sign of use, with a photo of each?');

export const conditionWordsAgree = defineWritten({
  id: 'condition-words-agree',
  family: 'text',
  title: 'The words for the condition agree',
  failureTitle: 'The piece is called new or unused, and worn',
  kinds: ['doubt'],
  basis: 'What is new or unused shows no wear.',
  innocent: '“New” may be the field that the marketplace filled in, or the marks come from storage.',
  settles: 'Every sign of use, with a photo.',
  source: practice,
  needs: { claims: ['condition'], listing: ['title', 'description', 'text', 'condition'] },
  run({ claims, listing }) {
    const claim = claims.condition.find(({ condition }) => fresh.includes(condition));
    const field = listing.condition.find(({ value }) => fresh.includes(value));
    if (!claim && !field) return { notApplicable: 'the listing does not call the piece new or unused' };
    const said = claim
      ? saying(claim.words, claim.at.field === 'data')
      : saying(field?.words ?? field?.value ?? '', field?.words === undefined || field.origin !== 'visible');
    // A marketplace's field calls everything used that had an owner: only the seller's own words stand against "new".
    const used = claims.condition.find(
      ({ condition, at }) =>
        at.field !== 'data' && (condition === 'used' || condition === 'worn' || condition === 'damaged'),
    );
    const text = listingText(listing);
    const denied = allWords(text, noWearWords).join(' ').toLowerCase();
    const wear = allWords(text, wearWords).find((words) => !denied.includes(words.toLowerCase()));
    const against = used?.words ?? wear;
    if (!against) return [];
    const speech: WrittenSpeech = {
      kind: 'doubt',
      statement: said.startsWith('The listing says')
        ? `${said} and also ${quote(against)}.`
        : `${said}, and the listing says ${quote(against)}.`,
      claims: [claim?.id ?? '', used?.id ?? ''].filter(Boolean),
      asks: [ask],
    };
    return [speech];
  },
});
