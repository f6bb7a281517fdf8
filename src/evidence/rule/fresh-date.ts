import type { Rule } from './types';

/** A part that has not darkened or dulled, and a date so early that it should have. Soft: it may have lain in its bag. */
export const freshDate = {
  id: 'fresh-date',
  left: ['fresh'],
  right: ['claimed-date', 'code'],
  over: 'date',
  informs: () => null,
  hardWhen: () => false,
} as const satisfies Rule;
