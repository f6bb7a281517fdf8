import { parseDates } from '../text';
import type { OtherNumber } from './types';

/** Shortest word that tells print from a lone code, and the years that a piece, or its maker's founding, may bear. */
const word = /\p{L}{3}/u;
const year = /^(?:1[789]|20)\d\d$/;
/** Hours and minutes of a day of 24 hours, the colon between them lost or read as another sign. Form: ISO 8601-1. */
const timeOfDay = /^(?:[01]\d|2[0-3])[-. ]?[0-5]\d$/;
/** A number with the sign of a unit: units of the SI, the litre beside it, and the inch. Source: SI Brochure, 9th edition. */
const measure = /^\d{1,3}(?:[./]\d)?(?: ?(?:MM|CM|KG|MG|ML|CL|IN)| [MGLVW])$/;

/**
 * What else a text with the look of a code may be by the other texts of its photo: on a label, a year is a founding year
 * as likely as a code, hours and minutes stand beside the day, and numbers have units. Null where it stands alone or is
 * none of these. `now` is the day of reading; without it a year may be of this century.
 */
export function otherNumber(text: string, beside: readonly string[], now = '2099-12-31'): OtherNumber | null {
  const written = text.trim().toUpperCase();
  if (!beside.some((other) => word.test(other))) return null;
  if (year.test(written) && written <= now.slice(0, 4)) return 'year';
  if (measure.test(written)) return 'measure';
  return timeOfDay.test(written) && beside.some((other) => tellsDay(other, now)) ? 'time' : null;
}

/** A month counts by its name: in numbers it is a code's own form. */
const tellsDay = (text: string, now: string): boolean =>
  parseDates(text, { language: null, now }).some(
    ({ form }) => form === 'day' || form === 'without-year' || (form === 'month' && word.test(text)),
  );
