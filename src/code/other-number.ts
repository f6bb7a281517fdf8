import { bare } from '../stamp';
import { parseDates } from '../text';
import type { OtherNumber } from './types';

/** Shortest word that tells print from a lone code, and the years that a piece, or its maker's founding, may bear. */
const word = /\p{L}{3}/u;
const year = /^(?:1[789]|20)\d\d$/;
/** Hours and minutes of a day of 24 hours, the colon between them lost or read as another sign. Common practice, no source. */
const timeOfDay = /^(?:[01]\d|2[0-3])[-. ]?[0-5]\d$/;
/**
 * A number with the sign of a unit: of the SI, the litre beside it, the kilocalorie of food labels, inch, ounce and pound.
 * From memory of the SI Brochure and of what labels say.
 */
const measure = /^\d{1,3}(?:[./]\d)? ?(?:MM|CM|KG|MG|ML|CL|KJ|KCAL|IN|OZ|LB)$/;
/** A unit of one letter, which may be a code's letter where no words stand beside it. */
const shortMeasure = /^\d{1,3}(?:[./]\d)? [MGLVW]$/;
/** What holes and eyelets, stitches and slots, links and pins in a row are read as. Own look at real photographs. */
const row = /^(?:[0ODQ]{3,}|[1IL]{3,}|[8B]{3,})$/;

/**
 * What else a text with the look of a code may be by the other texts of its photo: on a label, a year is a founding year
 * as likely as a code, and hours and minutes stand beside the day. A number with a unit, and a row of one shape, is likelier
 * no code whatever stands beside it. Null for what is none of these. `now` is the day of reading; without it a year may
 * be of this century.
 */
export function otherNumber(text: string, beside: readonly string[], now = '2099-12-31'): OtherNumber | null {
  const written = text.trim().toUpperCase();
  if (row.test(bare(written))) return 'row';
  if (measure.test(written)) return 'measure';
  if (!beside.some((other) => word.test(other))) return null;
  if (year.test(written) && written <= now.slice(0, 4)) return 'year';
  if (shortMeasure.test(written)) return 'measure';
  return timeOfDay.test(written) && beside.some((other) => tellsDay(other, now)) ? 'time' : null;
}

/** A month counts by its name: in numbers it is a code's own form. */
const tellsDay = (text: string, now: string): boolean =>
  parseDates(text, { language: null, now }).some(
    ({ form }) => form === 'day' || form === 'without-year' || (form === 'month' && word.test(text)),
  );
