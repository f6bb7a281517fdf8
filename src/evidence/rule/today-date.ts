import type { Rule } from './types';

/**
 * The day of the look, and what is dated after it. As it is said: nobody guesses a date that is yet to come. Never hard
 * against what the seller says, which may be a slip of the pen.
 */
export const todayDate = {
  id: 'today-date',
  left: ['today'],
  right: ['claimed-date', 'purchase-day', 'code'],
  over: 'date',
  informs: () => null,
  hardWhen: (_today, { says }) => says.kind === 'code',
  asSaid: true,
  evenImpossible: true,
} as const satisfies Rule;
