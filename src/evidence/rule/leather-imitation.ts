import type { Rule } from './types';

/** Leather, and what only looks like it, of the same part. Each of several parts may be of its own. */
export const leatherImitation = {
  id: 'leather-imitation',
  left: ['leather'],
  right: ['imitation'],
  over: 'quality',
  informs: () => null,
} as const satisfies Rule;
