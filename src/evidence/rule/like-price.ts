import { shares } from '../room';
import type { Rule } from './types';

/** What is asked for a used piece, and what the file says pieces in this condition cost at least. */
export const likePrice = {
  id: 'like-price',
  left: ['asked-used'],
  right: ['floor-like'],
  over: 'price',
  informs: () => null,
  leastShare: shares.ofLike,
} as const satisfies Rule;
