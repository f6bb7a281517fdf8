import * as z from 'zod';
import { isDataTerm } from '../claim';
import { askFor } from './asks';
import { defineCheck } from './frame';

export const returnTerms = defineCheck({
  id: 'return-terms',
  family: 'seller',
  kinds: ['gap', 'agreement'],
  source: {
    kind: 'published',
    text: 'US FTC consumer alert, November 2021, consumer.ftc.gov (stored copy of a reprint)',
  },
  data: z.strictObject({
    /** Null where the listing does not say. */
    accepted: z.boolean().nullable(),
    days: z.number().nullable(),
    /** The seller's own; null where only the page's data say it. */
    words: z.string().nullable(),
  }),
  needs: { listing: ['returns'], claims: ['returns'] },
  run({ listing, claims }) {
    const field = listing.returns[0]?.value;
    const claim = claims.returns[0];
    const said = field ?? claim;
    if (!said)
      return [{ kind: 'gap', data: { accepted: null, days: null, words: null }, asks: [askFor('returns', {})] }];
    const data = {
      accepted: said.accepted,
      days: (said.accepted && field?.days) || null,
      words: said.words && !isDataTerm(said.words) ? said.words : null,
    };
    const ids = claim && !field ? [claim.id] : [];
    if (said.accepted) return [{ kind: 'agreement', data, claims: ids }];
    return [{ kind: 'gap', data, claims: ids, asks: [askFor('not-as-described', {})] }];
  },
});
