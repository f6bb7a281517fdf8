/**
 * What stands at the end of a text, found by walking backwards. A pattern that ends in `$` is tried from every character
 * on and walks a long run again from each of them: that is the square of the run, on text that a page controls.
 */

/** The text without the characters at its end that a pattern for one character matches. */
export function withoutEnd(text: string, character: RegExp): string {
  let end = text.length;
  while (end > 0 && character.test(text[end - 1] as string)) end -= 1;
  return text.slice(0, end);
}

/** What follows the last character that a pattern matches; the whole text where none does. */
export function afterLast(text: string, character: RegExp): string {
  let start = text.length;
  while (start > 0 && !character.test(text[start - 1] as string)) start -= 1;
  return text.slice(start);
}

/** Where the last match of a global pattern ends; 0 without one. */
export function lastEnd(pattern: RegExp, text: string): number {
  let last = 0;
  for (const match of text.matchAll(pattern)) last = match.index + match[0].length;
  return last;
}

/** At most so many characters before a place; a number that the limit would cut in two is left out. */
export function aheadOf(text: string, place: number, most: number): string {
  let from = Math.max(0, place - most);
  while (from < place && /[\d.,]/.test(text[from - 1] ?? '')) from += 1;
  return text.slice(from, place);
}
