import type { Rule } from './types';

/**
 * A material that the maker did not use stands against every dated fact of the piece. It is told once, against the date
 * of the piece itself.
 */
export const otherMaterial = {
  id: 'other-material',
  left: ['other-material'],
  right: ['country', 'mark', 'material', 'other-material', 'model'],
  over: 'date',
  informs: () => null,
  hardWhen: () => false,
} as const satisfies Rule;
