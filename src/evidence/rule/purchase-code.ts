import type { Rule } from './types';

/** When the piece is said to be bought, and the date of a code. A purchase allows all that is older: no news. */
export const purchaseCode = {
  id: 'purchase-code',
  left: 'purchase',
  right: 'code',
  informs: () => false,
} as const satisfies Rule;
