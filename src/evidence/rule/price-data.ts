import type { Rule } from './types';

/** The price that the page shows, and the one that its data give. */
export const priceData = {
  id: 'price-data',
  left: ['price-shown'],
  right: ['price-in-data'],
  over: 'price',
  informs: () => null,
} as const satisfies Rule;
