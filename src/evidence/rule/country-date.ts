import { isBounded } from './bounded';
import type { Rule } from './types';

/**
 * The days in which the country claimed existed, and a date. That a country of today existed is no news. Hard only
 * against an exact date: names of countries are used loosely.
 */
export const countryDate = {
  id: 'country-date',
  left: ['country'],
  right: ['claimed-date', 'country', 'code'],
  over: 'date',
  hardWhen: (_country, date) => date.strength === 'hard',
  informs: ({ says }) => (says.kind === 'country' && says.place.length === 4 ? 'former-country' : null),
  narrows: (country) => isBounded(country),
} as const satisfies Rule;
