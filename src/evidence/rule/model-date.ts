import { isBounded } from './bounded';
import type { Rule } from './types';

/** The years of the model claimed, and a date. */
export const modelDate = {
  id: 'model-date',
  left: ['model'],
  right: ['claimed-date', 'code'],
  over: 'date',
  informs: () => 'another-date',
  narrows: (model) => isBounded(model),
} as const satisfies Rule;
