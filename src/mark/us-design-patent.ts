import { defineMark } from './define';
import { groupedNumber } from './number-series';
import { foundByGrant, grantOf } from './patents';

/** "Des. Pat. 140,435", "Design Patent No. 140435", "U.S. Pat. D140,435", "Pat. Des. 140435". */
const patterns = [
  /\b(?:(?<us>U\.?\s?S\.?\s?)?(?:Des(?:ign)?\b\.?\s{0,8}Pat(?:ent)?s?\b\.?|Pat(?:ent)?\b\.?\s{0,8}Des(?:ign)?\b\.?))\s{0,8}(?:Nos?\b\.?|#)?[\s:]{0,8}D?(?<number>\d{1,3}(?:,\d{3})+|\d{3,7})\b/giu,
  /(?<!\bDes(?:ign)?\b\.?\s{0,8})\b(?<us>U\.?\s?S\.?\s?)?Pat(?:ent)?s?\b\.?\s{0,8}(?:Nos?\b\.?|#)?[\s:]{0,8}D(?:es\.?)?\s?(?<number>\d{1,3}(?:,\d{3})+|\d{3,7})\b/giu,
];

/** The year of the grant: what carries the number is no older. */
export const usDesignPatent = defineMark({
  id: 'us-design-patent',
  find: (text) =>
    patterns
      .flatMap((pattern) => [...text.matchAll(pattern)])
      .sort((a, b) => a.index - b.index)
      .flatMap((match) => {
        const grant = grantOf('design', groupedNumber(match.groups?.number ?? ''));
        const at = { start: match.index, end: match.index + match[0].length };
        // Only the United States number design patents in a series with D; "Des. Pat." alone may be of another country.
        return grant ? foundByGrant(grant, 'design', at, match.groups?.us !== undefined || /D\d/u.test(match[0])) : [];
      }),
});
