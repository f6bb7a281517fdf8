import { isExact, roomDays } from '../room';
import type { Evidence } from '../types';
import type { Rule } from './types';

const dayMs = 86_400_000;
const ends = ({ spans }: Evidence): number => Math.max(...spans.map(({ to }) => Date.parse(to ?? '9999-12-31')));

/**
 * When the piece is said to be made and bought. Never hard: one of two years may be a slip of memory. That it was bought
 * soon after an exact date, as new, is worth telling; a purchase allows all that is older.
 */
export const makingPurchase = {
  id: 'making-purchase',
  left: ['claimed-date'],
  right: ['purchase'],
  over: 'date',
  informs: (making, purchase) =>
    making.spans.every(isExact) && ends(purchase) - ends(making) < roomDays.boughtNew * dayMs ? 'bought-new' : null,
  hardWhen: () => false,
} as const satisfies Rule;
