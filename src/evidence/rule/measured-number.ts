import type { Rule } from './types';

/**
 * What was measured on a part in a photo, and the number that the maker's file gives of it, with the measure's own
 * uncertainty as its room. A measure at a hand's marks is soft, so that not even a rule without exception makes a
 * conflict of it hard.
 */
export const measuredNumber = {
  id: 'measured-number',
  left: ['measured-number'],
  right: ['file-number'],
  over: 'value',
  informs: () => 'another-number',
} as const satisfies Rule;
