import { partNamed } from '../said/part';
import { isPeriod } from '../said/used-text';
import { rolesNamed } from '../table/columns';
import { type Inline, partOf } from './inline';

const longestBold = 60;

/** A bold line of a few words that ends no sentence. */
export const isHeadingLike = (text: string): boolean =>
  text.length >= 4 && text.length <= longestBold && /\p{L}{3}/u.test(text) && !/[.,;!]$/.test(text);

/** "Until 1959. No code.", "Lining: silk": bold words that head the line they stand in, by what they name. */
export function isLeadIn(text: string, end: number): boolean {
  if (end === 0 || end > longestBold) return false;
  const parts = /[.:：]\s?$/.test(text.slice(0, end)) || /^\s?[:：–—-]/.test(text.slice(end));
  const name = text.slice(0, end).replace(/[\s.:：]{1,4}$/, '');
  return parts && (isPeriod(name) || rolesNamed(name).length > 0 || partNamed(name) !== null);
}

/** A run without the words that head it. */
export function restOf(words: Inline, from: number): Inline {
  const skipped = /^[\s:：–—-]{0,4}/.exec(words.text.slice(from))![0].length;
  return partOf(words, from + skipped, words.text.length);
}
