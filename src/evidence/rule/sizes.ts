import type { Rule } from './types';

/** Two statements of one side. */
export const sizes = {
  id: 'sizes',
  left: ['size'],
  right: ['size'],
  over: 'size',
  informs: () => null,
} as const satisfies Rule;
