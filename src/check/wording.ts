import { isDataTerm } from '../claim';
import { askFor } from './asks';
import type { Ask } from './types';

/** Capitalises a sentence that starts with one of our own phrases. */
export const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** "a", "a and b", "a, b and c" */
export function listWords(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

export const countWords = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** The seller's own words in quotation marks, cut to what one line can hold. A term of the page's data is nobody's words. */
export function quote(words: string): string {
  if (isDataTerm(words)) return termWords(words);
  const line = words.replace(/\s+/g, ' ').trim();
  return `“${line.length > 80 ? `${line.slice(0, 79).trimEnd()}…` : line}”`;
}

/** "https://schema.org/MerchantReturnNotPermitted" as "merchant return not permitted" */
const termWords = (term: string): string =>
  term
    .replace(/^.*[/#:]/, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();

/**
 * "The listing says “brand new”"; what only the page's data say is told as theirs, without quotation marks: the seller
 * may never have written it.
 */
export const saying = (words: string, inData: boolean): string =>
  inData || isDataTerm(words)
    ? `The page’s data say ${isDataTerm(words) ? termWords(words) : words}`
    : `The listing says ${quote(words)}`;

const asWritten = (topic: string, wants: Ask['wants'], words: string): Ask => ({
  ask: 'as-written',
  topic,
  wants,
  data: { words },
});
export const askPhoto = (topic: string, words: string): Ask => asWritten(topic, 'photo', words);
export const askFact = (topic: string, words: string): Ask => asWritten(topic, 'fact', words);

/** The asks that many checks share, so that their answers are one question. */
export const commonAsks = {
  stampPhoto: askFor('stamp-photo', {}),
  madeDate: askFor('made-date', {}),
  origin: askFor('origin', {}),
  measures: askFor('measures', {}),
  returns: askFor('returns', {}),
  purchase: askFor('purchase', {}),
  payment: askFor('payment', {}),
} satisfies Record<string, Ask>;
