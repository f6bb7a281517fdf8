import { isNegated } from './clause';
import { foldWords, type Said } from './fold';
import { tableWords, wordsOf } from './lexicon';
import { anyOf, phraseFinder, phrasePattern } from './phrases';

export type Availability = 'offered' | 'sold' | 'removed' | 'reserved';

const status = tableWords('availability');
const find = phraseFinder<Availability>({ ...status, offered: [...status.offered, ...wordsOf('buy-or-bid')] });

/** "Sold by", "sold as seen", "sold separately", "1,234 sold" are not the listing's end. */
const soldOtherwise = new RegExp(`^\\s{0,2}(?:${phrasePattern(wordsOf('behind-sold')).source})`, 'u');
const countBefore = /[\d+]\s{0,2}(?:items?\s|artikel\s|articles?\s|x\s)?$/u;
const saleTalk = new RegExp(`(?:${phrasePattern(wordsOf('before-sold')).source})\\s{1,2}(?:not\\s|es\\s)?$`, 'u');

/** Words of a status that are a denial by themselves: "no longer available", "nicht mehr", "plus disponible". */
const saysItself = new RegExp(`^(?:${anyOf([...wordsOf('negation'), 'ya no', 'plus', "n'"])})`, 'u');

/** Status words of a page, in order; "not sold", "sold as seen" and "sold by" are none. */
export function findAvailability(text: string): Said<Availability>[] {
  const folded = foldWords(text);
  return find(folded).flatMap(({ value, foldedStart, foldedEnd, start, end, words }) => {
    const left = folded.text.slice(Math.max(0, foldedStart - 24), foldedStart);
    if (
      value === 'sold' &&
      (soldOtherwise.test(folded.text.slice(foldedEnd, foldedEnd + 16)) ||
        countBefore.test(left) ||
        saleTalk.test(left))
    )
      return [];
    // Without its accent the French word is the English one for the least price of an auction.
    if (value === 'reserved' && /^reserve$/i.test(words)) return [];
    if (isNegated(folded.text, foldedStart, foldedEnd) && !saysItself.test(foldWords(words).text)) return [];
    return [{ value, start, end, words }];
  });
}

/** Words and forms of one size or colour among several: "Size 30", "XS". */
const ofOneVariant = new RegExp(
  `${phrasePattern(wordsOf('variant')).source}|(?<![\\p{L}\\d])\\d{2}(?:\\s?cm)?(?![\\p{L}\\d])`,
  'u',
);

/** Whether a line's status is that of one size or colour: "Size 30 – sold out", "XS (ausverkauft)". */
export const isOfOneVariant = (line: string): boolean => ofOneVariant.test(foldWords(line).text);
