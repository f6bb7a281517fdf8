import * as z from 'zod';
import type { Condition } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { noWearWords, wearWords } from './text-words';
import { saidSchema } from './types';
import { allWords, listingText } from './words';

const fresh: Condition[] = ['new', 'unused'];

export const conditionWordsAgree = defineCheck({
  id: 'condition-words-agree',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({
    said: saidSchema,
    /** The seller's words for wear. */
    against: z.string(),
  }),
  needs: { claims: ['condition'], listing: ['title', 'description', 'text', 'condition'] },
  run({ claims, listing }) {
    const claim = claims.condition.find(({ condition }) => fresh.includes(condition));
    const field = listing.condition.find(({ value }) => fresh.includes(value));
    if (!claim && !field) return { notApplicable: because('not-called-new', {}) };
    const said = claim
      ? { words: claim.words, inData: claim.at.field === 'data' }
      : {
          words: field?.words ?? field?.value ?? '',
          inData: field?.words === undefined || field.origin !== 'visible',
        };
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
    return [
      {
        kind: 'doubt',
        data: { said, against },
        claims: [claim?.id ?? '', used?.id ?? ''].filter(Boolean),
        asks: [askFor('condition', {})],
      },
    ];
  },
});
