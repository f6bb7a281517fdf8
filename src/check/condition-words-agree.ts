import * as z from 'zod';
import type { Condition } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { saidOf } from './said-claims';
import { saidSchema } from './types';

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
  needs: { claims: ['condition', 'wear'], listing: ['condition'] },
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
    // What is denied in one place is not held against the piece in another: it may be said of something else there.
    const plain = (words: string) => words.toLowerCase();
    const denied = new Set(claims.wear.flatMap(({ polarity, words }) => (polarity === 'is-not' ? [plain(words)] : [])));
    const against = used ?? saidOf(claims.wear).find(({ words }) => !denied.has(plain(words)));
    if (!against) return [];
    return [
      {
        kind: 'doubt',
        data: { said, against: against.words },
        claims: [...(claim ? [claim.id] : []), against.id],
        asks: [askFor('condition', {})],
      },
    ];
  },
});
