import { anyOf, rightBehind, wordsOf } from '../text';

const unit = new RegExp(
  `^\\s?(?:cm|mm|in\\b|inch|"|x\\s?\\d|×|%|€|\\$|£|円|kg|g\\b|ml|euros?|(?:${anyOf(wordsOf('years', 'days'))})(?!\\p{L}))`,
  'iu',
);

/** "Staat KV0915 in": inches are counted in digits alone. */
const inches = /^\s?in\b/iu;
const hasLetters = /[A-Z]{2}\d{3}|\d{3}[A-Z]{2}|\([A-Z]\)|[A-Z]\d{4}|\d[A-Z]\d/;

/** "45 x 27", "30 %", "12 years": what stands behind digits that are no code. */
export function hasUnitBehind(text: string, end: number, code: string): boolean {
  const behind = rightBehind(text, end);
  return unit.test(behind) && !(hasLetters.test(code) && inches.test(behind));
}
