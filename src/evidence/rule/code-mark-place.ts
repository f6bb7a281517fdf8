import type { Rule } from './types';

/** The country of a code's plant, and that of a mark. Never hard: the wording may be that of a part. */
export const codeMarkPlace = {
  id: 'code-mark-place',
  left: ['code'],
  right: ['mark'],
  over: 'place',
  informs: () => 'another-place',
  hardWhen: () => false,
} as const satisfies Rule;
