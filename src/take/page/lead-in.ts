import { isLabel } from '../said/label';
import { isPeriod } from '../said/used-text';
import { type Inline, partOf } from './inline';

const longestBold = 60;

/** A bold line of a few words that ends no sentence. */
export const isHeadingLike = (text: string): boolean =>
  text.length >= 4 && text.length <= longestBold && /\p{L}{3}/u.test(text) && !/[.,;!]$/.test(text);

const unended = (name: string): string => name.replace(/[\s.:：]{1,4}$/, '');

/** "Until 1959. No code.", "Lining: silk": bold words that head the line they stand in, by what they name. */
export function isLeadIn(text: string, end: number): boolean {
  if (end === 0 || end > longestBold) return false;
  const parts = /[.:：]\s?$/.test(text.slice(0, end)) || /^\s?[:：–—-]/.test(text.slice(end));
  const name = unended(text.slice(0, end));
  return parts && (isPeriod(name) || isLabel(name));
}

/** The words that head a run, without what ends them. */
export function leadOf(words: Inline, end: number): Inline {
  const lead = partOf(words, 0, end);
  return { ...lead, text: unended(lead.text) };
}

/** A run without the words that head it. */
export function restOf(words: Inline, from: number): Inline {
  const skipped = /^[\s:：–—-]{0,4}/.exec(words.text.slice(from))![0].length;
  return partOf(words, from + skipped, words.text.length);
}
