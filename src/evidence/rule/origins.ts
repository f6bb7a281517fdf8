import type { Rule } from './types';

/** Two countries claimed. Never hard: one may be that of the house, of the leather or of the shop. */
export const origins = {
  id: 'origins',
  left: ['origin'],
  right: ['origin'],
  over: 'place',
  informs: () => null,
  hardWhen: () => false,
} as const satisfies Rule;
