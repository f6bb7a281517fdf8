import type { Rule } from './types';

/** The age that a word promises ("vintage", "antique"), and a date. Soft: sellers use the words loosely. */
export const ageWordDate = {
  id: 'age-word-date',
  left: ['age-word'],
  right: ['claimed-date', 'code'],
  over: 'date',
  informs: () => null,
  hardWhen: () => false,
} as const satisfies Rule;
