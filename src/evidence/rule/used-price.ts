import { shares } from '../room';
import type { Rule } from './types';

/** What is asked for a used piece in order, and the maker's smallest new prices. */
export const usedPrice = {
  id: 'used-price',
  left: ['asked-used'],
  right: ['floor', 'floor-then'],
  over: 'price',
  informs: () => null,
  leastShare: shares.ofUsed,
} as const satisfies Rule;
