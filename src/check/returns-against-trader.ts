import * as z from 'zod';
import { isDataTerm } from '../claim';
import { askFor } from './asks';
import { defineCheck } from './frame';
import { because } from './reasons';

export const returnsAgainstTrader = defineCheck({
  id: 'returns-against-trader',
  family: 'seller',
  kinds: ['doubt'],
  source: {
    kind: 'published',
    text: 'UK S.I. 2013/3134 regs 27 to 30 (29 and 30 from memory); Directive 2011/83/EU Arts 9 to 16 (article numbers from memory)',
  },
  data: z.strictObject({
    /** The seller's own; null where only the page's data say it. */
    words: z.string().nullable(),
  }),
  unless: ({ listing }) => (listing.seller.trader[0]?.value === 'trader' ? null : because('seller-not-business', {})),
  needs: { listing: ['seller', 'returns'], claims: ['returns'], facts: ['distanceLaw'] },
  run({ listing, claims }) {
    const refused = [...listing.returns.map(({ value }) => value), ...claims.returns].find(({ accepted }) => !accepted);
    if (!refused) return [];
    const data = { words: isDataTerm(refused.words) ? null : refused.words };
    return [{ kind: 'doubt', data, claims: claims.returns.map(({ id }) => id), asks: [askFor('returns', {})] }];
  },
});
