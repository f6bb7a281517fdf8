import { isBounded } from './bounded';
import type { Rule } from './types';

/** The date of a code, and the dates of a public mark. */
export const codeMark = {
  id: 'code-mark',
  left: ['code'],
  right: ['mark'],
  over: 'date',
  informs: (_code, mark) => (isBounded(mark) ? 'closed-period' : null),
} as const satisfies Rule;
