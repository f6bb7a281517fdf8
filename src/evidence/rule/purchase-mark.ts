import type { Rule } from './types';

/**
 * When the piece is said to be bought, and the dates of a public mark: nobody buys a piece before its label is made. Never
 * hard: the year of a purchase is told from memory. Common practice, no source.
 */
export const purchaseMark = {
  id: 'purchase-mark',
  left: ['purchase'],
  right: ['mark'],
  over: 'date',
  informs: () => null,
  hardWhen: () => false,
  toldTogether: true,
} as const satisfies Rule;
