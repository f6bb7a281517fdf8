import type { Rule } from './types';

/** The width that is stated, and the number in the model's name. */
export const sizeName = {
  id: 'size-name',
  left: ['size'],
  right: ['named-width'],
  over: 'size',
  informs: () => 'another-length',
} as const satisfies Rule;
