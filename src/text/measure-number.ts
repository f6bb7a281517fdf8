import { anyLanguage, type EachLanguage } from './each-language';
import { andHalf, andQuarter } from './unit-words';

const vulgar: Record<string, [number, number]> = {
  '½': [1, 2],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
  '⅕': [1, 5],
};
const number =
  /(\d{1,4})(?:[ -]{0,1}([½¼¾⅓⅔⅛⅜⅝⅞⅕])|[ -](\d{1,2})[/⁄](\d{1,2})(?!\d)|[.,](\d{1,2})(?!\d))?|([½¼¾⅓⅔⅛⅜⅝⅞⅕])/y;
/** "5/8 inch": a fraction without whole inches; other units are not written so. */
const plainFraction =
  /(\d{1,2})[/⁄](2|3|4|8|16|32)(?=\s?(?:"|''|in(?:ch|ches|\.)?(?!\p{L})|zoll|pouces?|pollic[ei]|pulgadas?|duim))/iuy;

const inWords = (row: EachLanguage) => new RegExp(`\\s?(?:${anyLanguage(row)})(?![\\p{L}\\d])`, 'iuy');
const spoken: readonly (readonly [pattern: RegExp, part: number])[] = [
  [inWords(andHalf), 1 / 2],
  [inWords(andQuarter), 1 / 4],
];
/** "9 and a half inches". */
function spokenPart(text: string, end: number): { part: number; end: number } | null {
  for (const [pattern, part] of spoken) {
    pattern.lastIndex = end;
    if (pattern.test(text)) return { part, end: pattern.lastIndex };
  }
  return null;
}

/** A number of a size, the step that it is stated to, and where it ends. */
export interface Size {
  value: number;
  step: number;
  end: number;
}

/** The number at `position`, its size and the step it is stated to; null when none stands there. */
export function readSize(text: string, position: number): Size | null {
  plainFraction.lastIndex = position;
  const small = plainFraction.exec(text);
  if (small && Number(small[1]) < Number(small[2]))
    return { value: Number(small[1]) / Number(small[2]), step: 1 / Number(small[2]), end: position + small[0].length };
  number.lastIndex = position;
  const match = number.exec(text);
  if (!match) return null;
  const [, whole, glyph, top, bottom, decimals, lone] = match;
  const said = glyph || top || decimals || lone ? null : spokenPart(text, position + match[0].length);
  if (said) return { value: Number(whole) + said.part, step: said.part, end: said.end };
  const written = glyph ?? lone;
  const fraction = written ? vulgar[written] : top && Number(bottom) > 0 ? [Number(top), Number(bottom)] : null;
  const [part = 0, of = 1] = fraction ?? [];
  if (part >= of) return null;
  return {
    value: Number(decimals ? `${whole}.${decimals}` : (whole ?? 0)) + part / of,
    step: fraction ? 1 / of : decimals ? 10 ** -decimals.length : 1,
    end: position + match[0].length,
  };
}
