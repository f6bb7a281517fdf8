import type { Rule } from './types';

/** The proportion of two sides, and those that the sizes of the model's family have. */
export const proportionFamily = {
  id: 'proportion-family',
  left: ['proportion'],
  right: ['family-proportion'],
  over: 'value',
  informs: () => null,
} as const satisfies Rule;
