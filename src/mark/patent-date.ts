import { daysInMonth, isoDate, sinceSpan } from '../span';
import { defineMark, rowSource } from './define';

const months = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
/** "Pat. Nov. 25, 1851", "PAT'D MARCH 6 1951", "Patented 8 May 1928". */
const pattern =
  /\bPat(?:ented|['’]?d|ent)?\b\.?[\s:]*(?:(?<month>Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\.?\s*(?<day>\d{1,2})|(?<day2>\d{1,2})\s*(?<month2>Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\.?),?\s*(?<year>1[89]\d\d|20\d\d)\b/giu;

/** The day of a grant as it is written: what carries it is no older. */
export const patentDate = defineMark({
  id: 'patent-date',
  find: (text) =>
    [...text.matchAll(pattern)].flatMap((match) => {
      const { month, month2, day, day2, year } = match.groups ?? {};
      const at = months.indexOf((month ?? month2 ?? '').slice(0, 3).toLowerCase()) + 1;
      const number = Number(day ?? day2);
      if (number < 1 || number > daysInMonth(Number(year), at)) return [];
      const date = isoDate(Number(year), at, number);
      const isTuesday = new Date(`${date}T00:00:00Z`).getUTCDay() === 2;
      // US grants fall on Tuesdays since 1848: another weekday is worth a second look at the photo, not an accusation.
      return [
        {
          start: match.index,
          end: match.index + match[0].length,
          spans: [sinceSpan(date)],
          strength: 'soft' as const,
          verified: false,
          source: rowSource('the date as it is written; US practice of granting on Tuesdays since 1848', false),
          says: { kind: 'patent-of' as const, date },
          cautions: [{ kind: 'from-below' as const }, ...(isTuesday ? [] : [{ kind: 'not-tuesday' as const }])],
        },
      ];
    }),
});
