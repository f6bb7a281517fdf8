import type { Rule } from './types';

/**
 * When the system and the plant of a code were in use, and every other date. What follows from a reading falls with it:
 * nothing is told of it that the reading itself does not say.
 */
export const codePeriod = {
  id: 'code-period',
  left: ['system', 'plant'],
  right: ['claimed-date', 'purchase', 'country', 'mark', 'material', 'other-material', 'model'],
  over: 'date',
  informs: () => null,
  hardWhen: () => false,
} as const satisfies Rule;
