import type { Rule } from './types';

/** A solid metal, and another metal of the same part: it may be plated with another one, not with itself. */
export const solidMetal = {
  id: 'solid-metal',
  left: ['solid-metal'],
  right: ['other-metal'],
  over: 'quality',
  informs: () => null,
} as const satisfies Rule;
