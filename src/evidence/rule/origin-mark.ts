import type { Rule } from './types';

/** The country claimed, and that of a mark. Never hard: the wording may be that of a part, or the office of the house. */
export const originMark = {
  id: 'origin-mark',
  left: ['origin'],
  right: ['mark'],
  over: 'place',
  informs: () => 'another-place',
  hardWhen: () => false,
} as const satisfies Rule;
