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
} satisfies Record<string, Ask>;
