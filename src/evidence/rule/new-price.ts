import { shares } from '../room';
import type { Rule } from './types';

/** What is asked for a piece that is called new, and the maker's smallest new price of its time. */
export const newPrice = {
  id: 'new-price',
  left: ['asked-new'],
  right: ['floor-then'],
  over: 'price',
  informs: () => null,
  leastShare: shares.ofNew,
} as const satisfies Rule;
