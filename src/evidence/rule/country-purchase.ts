import { countryDate } from './country-date';
import type { Rule } from './types';

/** The days in which the country claimed existed, and when the piece is said to be bought. Never hard: the year of a
 * purchase is told from memory. */
export const countryPurchase = {
  ...countryDate,
  id: 'country-purchase',
  right: ['purchase'],
  hardWhen: () => false,
  toldTogether: true,
} as const satisfies Rule;
