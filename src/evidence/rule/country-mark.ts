import { placesAgree } from '../../place';
import { roomDays } from '../room';
import type { Evidence } from '../types';
import { countryDate } from './country-date';
import type { Rule } from './types';

/** A country that is no more: today's names are also given to older pieces, and so date nothing against a label. */
const former = ({ says }: Evidence): string | null =>
  says.kind === 'country' && says.place.length === 4 ? says.place : null;

/** That it names another country is told of its place; what only the listing names of it is the seller's own account. */
function mayStandAgainst(mark: Evidence, country: string): boolean {
  if (mark.says.kind !== 'mark' || mark.says.inText) return false;
  return mark.places.length === 0 || mark.places.some((place) => placesAgree(place, country));
}

/**
 * The days in which the country claimed existed, and the dates of a public mark that a photo shows. Never hard: the mark
 * may be that of a part or of a later repair, and names of countries are used loosely. Common practice, no source.
 */
export const countryMark = {
  ...countryDate,
  id: 'country-mark',
  right: ['mark'],
  hardWhen: () => false,
  room(country, mark) {
    const place = former(country);
    return place !== null && mayStandAgainst(mark, place) ? roomDays.labelStock : roomDays.anyTime;
  },
  toldTogether: true,
} as const satisfies Rule;
