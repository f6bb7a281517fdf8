import { shares } from '../room';
import type { Rule } from './types';

/** What is asked, and what is said to have been asked before. */
export const priceCut = {
  id: 'price-cut',
  left: ['price-now'],
  right: ['price-before'],
  over: 'price',
  informs: () => null,
  leastShare: shares.afterCut,
} as const satisfies Rule;
