import { anyOf, wordsOf } from '../text';

const unit = new RegExp(
  `^\\s?(?:cm|mm|in\\b|inch|"|x\\s?\\d|×|%|€|\\$|£|円|kg|g\\b|ml|euros?|(?:${anyOf(wordsOf('years', 'days'))})(?!\\p{L}))`,
  'iu',
);
const longest = 12;

/** "45 x 27", "30 %", "12 years": what stands behind digits that are no code. */
export const hasUnitBehind = (text: string, end: number): boolean => unit.test(text.slice(end, end + longest));
