import type { Rule } from './types';

/** What is called new, and a word for use or wear. A piece called used that shows none is no news. */
export const newUsed = {
  id: 'new-used',
  left: ['called-new'],
  right: ['called-used'],
  over: 'quality',
  informs: () => null,
} as const satisfies Rule;
