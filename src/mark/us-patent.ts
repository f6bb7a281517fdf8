import { defineMark, type MarkFound } from './define';
import { groupedNumber } from './number-series';
import { foundByGrant, grantOf } from './patents';

/** "Pat. No. 1,234,567", "U.S. Patent 2,544,409", "Pats. 1,234,567 & 1,234,568"; a number after D or Re is another series. */
const lead =
  /\b(?<us>U\.?\s?S\.?\s?(?:A\.?\s?)?)?(?<foreign>(?:British|Brit\.?|UK|U\.K\.|GB|German|French|Canadian|Can\.?|Japan(?:ese)?|Swiss|Italian|European|EP)\s{1,8})?(?:Pat(?:ent)?s?|Patent(?:ed)?)\b\.?\s{0,8}(?:Nos?\b\.?|Number|N[°º]|№|#)?[\s:]{0,8}(?<numbers>\d(?:[\d,.' ]{2,})?\d(?:\s*(?:,|&|and|;)\s*\d[\d,.]*\d)*)/giu;
const usAfter = /^[\s,()]*U\.?\s?S\.?\s?A?\b/u;

/** A listing's prices and years stand after "patent leather": a patent number needs "No", a US prefix or grouping. */
const namesNumber = (words: string): boolean =>
  /N(?:os?|umber|°|º)\b|№|#|\d{1,2},\d{3}(?:,\d{3})?|U\.?\s?S/iu.test(words);

/** The year of the grant: what carries the number is no older, and may be decades younger. */
export const usPatent = defineMark({
  id: 'us-patent',
  find: (text) =>
    [...text.matchAll(lead)].flatMap((match) => {
      const { us, foreign, numbers = '' } = match.groups ?? {};
      if (foreign || !namesNumber(match[0])) return [];
      const end = match.index + match[0].length;
      const isUs = us !== undefined || usAfter.test(text.slice(end, end + 8));
      return [...numbers.matchAll(/\d{1,3}(?:[,.' ]\d{3})+|\d{4,8}/gu)].flatMap((number): MarkFound[] => {
        const start = end - numbers.length + number.index;
        const grant = grantOf('utility', groupedNumber(number[0]));
        const at =
          number.index === 0
            ? { start: match.index, end: start + number[0].length }
            : { start, end: start + number[0].length };
        return grant ? foundByGrant(grant, 'utility', at, isUs) : [];
      });
    }),
});
