import type { Rule } from './types';

/** The country claimed, and that of a code's plant. */
export const originCode = {
  id: 'origin-code',
  left: ['origin'],
  right: ['code'],
  over: 'place',
  informs: () => 'another-place',
  yieldsTo: () => true,
} as const satisfies Rule;
