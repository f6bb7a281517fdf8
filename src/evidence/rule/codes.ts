import type { Rule } from './types';

/** A code that the listing quotes, and one that is read: it might as well have been another. */
export const codes = {
  id: 'codes',
  left: ['shown-code'],
  right: ['quoted-code'],
  over: 'quality',
  informs: () => 'another-code',
} as const satisfies Rule;
