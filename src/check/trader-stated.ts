import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck } from './frame';

export const traderStated = defineCheck({
  id: 'trader-stated',
  family: 'seller',
  kinds: ['gap'],
  source: {
    kind: 'published',
    text: 'Directive 2011/83/EU as amended by (EU) 2019/2161; UK S.I. 2013/3134 (article numbers from memory, not verified)',
  },
  data: z.strictObject({}),
  needs: { listing: ['seller'], perhaps: ['distanceLaw'] },
  run({ listing, fact }) {
    if (listing.seller.trader.length > 0) return [];
    if (!('is' in fact.distanceLaw)) return fact.distanceLaw;
    return [{ kind: 'gap', data: {}, asks: [askFor('trader', {})] }];
  },
});
