import { isBounded } from './bounded';
import type { Rule } from './types';

/** What the listing says of making, and the dates of a public mark. */
export const claimedDateMark = {
  id: 'claimed-date-mark',
  left: ['claimed-date'],
  right: ['mark'],
  over: 'date',
  informs: (_claim, mark) => (isBounded(mark) ? 'closed-period' : null),
} as const satisfies Rule;
