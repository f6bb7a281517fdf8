import { isBounded } from './bounded';
import type { Rule } from './types';

/** What the listing says of making or purchase, and the dates of a public mark. */
export const claimedDateMark = {
  id: 'claimed-date-mark',
  left: ['claimed-date', 'purchase'],
  right: ['mark'],
  over: 'date',
  informs: (claim, mark) => (claim.says.kind === 'made' && isBounded(mark) ? 'closed-period' : null),
} as const satisfies Rule;
