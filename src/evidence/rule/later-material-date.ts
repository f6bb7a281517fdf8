import type { Rule } from './types';

/**
 * When the maker used what a part is of that the seller says is another one now, and a date of the piece. That the two
 * are apart is what the seller says; that they meet tells nothing: a repair may use the old material.
 */
export const laterMaterialDate = {
  id: 'later-material-date',
  left: ['later-material'],
  right: ['claimed-date', 'code'],
  over: 'date',
  informs: () => null,
  hardWhen: () => false,
  apartAsSaid: true,
} as const satisfies Rule;
