import { isExact, roomDays } from '../room';
import type { Evidence } from '../types';
import type { Rule } from './types';

const isLoose = ({ spans }: Evidence): boolean => !spans.every(isExact);

/** Two dates of making that the seller gives. Never hard: one may be that of a similar piece, or a slip of the pen. */
export const claimedDates = {
  id: 'claimed-dates',
  left: ['claimed-date'],
  right: ['claimed-date'],
  over: 'date',
  informs: () => 'another-date',
  hardWhen: () => false,
  room: (one, other) => (isLoose(one) || isLoose(other) ? roomDays.looseDates : 0),
} as const satisfies Rule;
