import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { because } from './reasons';

export const sellerChanged = defineCheck({
  id: 'seller-changed',
  family: 'changes',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ before: z.string(), now: z.string(), readAt: z.string() }),
  needs: { previous: true, listing: ['seller'] },
  run({ previous, listing }) {
    const now = listing.seller.name[0]?.value;
    if (!previous.seller || !now) return { cannotTell: because('seller-not-named-twice', {}) };
    if (now.trim().toLowerCase() === previous.seller.trim().toLowerCase()) return [];
    const data = { before: previous.seller, now, readAt: previous.readAt };
    return [{ kind: 'doubt', data, asks: [askFor('changed-hands', {})] }];
  },
});
