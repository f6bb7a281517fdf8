import { dimensionLetters, rightBehind, withoutEnd } from '../text';
import { hasUnitBehind } from './unit-behind';

/** What sets a code off from the words ahead of it, as part of a pattern. */
export const opensQuote = `["'(„“「『«]`;

/** "K V 0 9 1 5", "KV 0 9 / 1 5", "14 C 50 M 37", "10 / 27", "K.V. 0 9 1 5", a letter in brackets for one in a frame, or up to four groups. */
const codeShape =
  /(?=\d{1,2} [A-Z]{1,2} \d|[A-Z]{1,2} \d{1,2} [A-Z])[A-Z0-9]{1,2}(?: (?:\d{1,2}|[A-Z]{1,2})(?![.\-/·]?[A-Z0-9])){4,7}|(?:[A-Z]{2,3}(?= \d )|(?:[A-Z]\.){1,3}(?= \d )|[A-Z0-9] [A-Z0-9])(?: (?:(?<=\d )[-./·] (?=\d))?[A-Z0-9]){2,14}(?![.\-/·]?[A-Z0-9])|\d{1,2} \/ \d{2}(?:\d{2})?(?![.\-/·]?[A-Z0-9])|(?:\([A-Z0-9]\)|\[[A-Z0-9]\]|[A-Z0-9])(?:[.\-/·]?[A-Z0-9]){0,15}(?: [A-Z0-9](?:[.\-/·]?[A-Z0-9]){0,7}){0,3}/gy;

/** "W 40 H 31 D 16": letters of sides, each ahead of its number. */
function opensRowOfSides(text: string): boolean {
  const [, one, other] = /^([A-Z]{1,2}) \d{1,2} ([A-Z]{1,2}) \d{1,2}(?!\d)/.exec(text) ?? [];
  const names = [one, other].map((letters) => letters?.toLowerCase() ?? '');
  return one !== other && names.every((letters) => letters in dimensionLetters);
}

const looksLikeCode = (text: string) =>
  (text.match(/\d/g) ?? []).length >= 2 && text.replace(/[^A-Z0-9]/g, '').length >= 3;

/** "NUMERO E3055998 DENTRO LA TASCHINA": where all is written in capitals, a group of letters alone is a word. */
function inCapitals(text: string, start: number): boolean {
  const around = text.slice(Math.max(0, start - 24), start + 48);
  return !/\p{Ll}/u.test(around) && /\p{Lu}{4}/u.test(around);
}
const withoutWords = (groups: string[]): string[] => {
  const word = groups.findIndex((group, at) => group.length > (at > 0 ? 1 : 2) && /^[A-Z]+$/.test(group));
  return word < 0 ? groups : groups.slice(0, word);
};

/** The code at a position, cut at the first word that cannot belong to it. */
export function codeAt(text: string, start: number): string | null {
  codeShape.lastIndex = start;
  const match = codeShape.exec(text);
  if (!match || opensRowOfSides(match[0])) return null;
  const words = inCapitals(text, start) ? withoutWords(match[0].split(' ')) : match[0].split(' ');
  while (words.length > 0) {
    const code = withoutEnd(words.join(' '), /[.\-/·]/).trimEnd();
    const end = start + code.length;
    // A code in quotes is closed by one that is no inch.
    const behind = text[start - 1] === '"' && text[end] === '"' ? end + 1 : end;
    if (
      looksLikeCode(code) &&
      !/^[\p{Script=Latin}\p{N}]/u.test(rightBehind(text, behind)) &&
      !hasUnitBehind(text, behind, code)
    )
      return code;
    words.pop();
  }
  return null;
}

/** Whether a code may begin here, behind no letter and no digit: with a capital, a digit, or one of these in brackets. */
export const opensCode = (text: string, at: number) => {
  opening.lastIndex = at;
  return opening.test(text) && !/[\p{Script=Latin}\p{N}]/u.test(text[at - 1] ?? '');
};
const opening = /[A-Z0-9]|\([A-Z0-9]\)[A-Z0-9 ]|\[[A-Z0-9]\][A-Z0-9 ]/y;
