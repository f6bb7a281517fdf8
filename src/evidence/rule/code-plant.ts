import type { Rule } from './types';

/** The date of a code, and the time in which its own plant was at work. It is one fact, which agrees with no other. */
export const codePlant = {
  id: 'code-plant',
  left: ['code'],
  right: ['plant'],
  over: 'date',
  informs: () => 'closed-period',
  narrows: () => false,
  ofOneCode: 'plant',
} as const satisfies Rule;
