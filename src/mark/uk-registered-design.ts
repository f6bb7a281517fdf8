import { defineMark, rowSource } from './define';
import { groupedNumber, placeInSeries, type SeriesRow } from './number-series';
import table from './tables/uk-registered-designs.json';

const rows: SeriesRow[] = table.rows.map(([year, first, verified]) => ({
  since: String(year),
  first: Number(first),
  verified: verified === 'stored',
}));

/** Copies of the table differ by up to a few hundred numbers: so near to a boundary either year may be right. */
const nearBoundary = 500;

/** "Rd. No. 821265", "Regd. Design No 650,123", "Registered Design 900123". A bare "Rd" is a road. */
const pattern =
  /\b(?:R(?:eg)?\.?\s?[’']?d\b\.?\s{0,8}(?:Des(?:ign)?\b\.?\s{0,8})?(?:N(?:o|os|umber|r)\b\.?|N[°º]|№|#)|R(?:egiste)?re?d?\b\.?\s{1,8}Des(?:ign)?s?\b\.?\s{0,8}(?:N(?:o|os)\b\.?|№|#)?)[\s:]{0,8}(?<number>\d{1,3}(?:[,. ]\d{3})+|\d{3,7})\b/giu;

export interface Registration {
  /** First and last year in which the number may have been registered; the same when it is not near a boundary. */
  years: [number, number];
  /** Beyond the table: that year or later. */
  beyond: boolean;
  verified: boolean;
}

/** The year in which a UK design of the one series (1884 on) was registered, one year either way near a boundary; null below 1. */
export function registrationOf(number: number): Registration | null {
  const place = Number.isInteger(number) ? placeInSeries(rows, number) : null;
  if (!place) return null;
  const year = Number(place.row.since);
  const isFirst = place.row === rows[0];
  const first = !isFirst && place.above < nearBoundary ? year - 1 : year;
  const last = place.below !== null && place.below <= nearBoundary ? year + 1 : year;
  return { years: [first, last], beyond: place.beyond, verified: place.row.verified };
}

/** The year in which the design was registered: what carries the number is no older. */
export const ukRegisteredDesign = defineMark({
  id: 'uk-registered-design',
  find: (text) =>
    [...text.matchAll(pattern)].flatMap((match) => {
      const number = groupedNumber(match.groups?.number ?? '');
      const registration = registrationOf(number);
      // "Mill Rd No 112" is an address.
      const isRoad =
        number < 10_000 && /\p{L}{3}\s{1,12}$/u.test(text.slice(Math.max(0, match.index - 12), match.index));
      if (!registration || isRoad) return [];
      const [first] = registration.years;
      return [
        {
          start: match.index,
          end: match.index + match[0].length,
          spans: [{ from: `${first}-01-01`, to: null, precision: 'range' as const }],
          strength: registration.verified ? ('hard' as const) : ('soft' as const),
          verified: registration.verified,
          source: rowSource(table.source, registration.verified),
          says: { kind: 'registered-design' as const, number, years: registration.years, beyond: registration.beyond },
          cautions: [{ kind: 'approximate-table' as const }],
        },
      ];
    }),
});
