import type { Rule } from './types';

/**
 * When the maker stamped, or had begun to where the piece carries a code, and the date of making that is claimed. As it
 * is said: the room of a loose word would swallow the years just before the first stamps, which are the ones in doubt.
 */
export const stampingDate = {
  id: 'stamping-date',
  left: ['stamping', 'stamped'],
  right: ['claimed-date'],
  over: 'date',
  informs: () => null,
  asSaid: true,
  hardWhen: (_stamping, claim) => claim.strength === 'hard',
} as const satisfies Rule;
