import type { Rule } from './types';

/** The length of a side that is stated, and that of the model. */
export const sizeModel = {
  id: 'size-model',
  left: ['size'],
  right: ['model-size'],
  over: 'size',
  informs: () => 'another-length',
} as const satisfies Rule;
