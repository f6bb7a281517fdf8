import { foldWords, phraseTest } from '../../text';
import { wordsFor } from '../words';

/** Francs as they are named with their country, or by their code (ISO 4217). */
const named = (['frf', 'bef', 'chf', 'luf'] as const).map((code) => ({
  code: code.toUpperCase(),
  words: phraseTest([code, ...wordsFor(`money-${code}`)]),
}));

/** Whose francs a text means, each once. Figures may touch what names them: "120CHF". */
function countriesOf(text: string): string[] {
  const parted = foldWords(text.replace(/(?<=\d)(?=\p{L})|(?<=\p{L})(?=\d)/gu, ' ')).text;
  return named.filter(({ words }) => words.test(parted)).map(({ code }) => code);
}

/** Whose francs a page means (ISO 4217): of the one country that it names with them; null where it names none, or several. */
export function francsOf(text: string): string | null {
  const [only, ...more] = countriesOf(text);
  return only !== undefined && more.length === 0 ? only : null;
}

/** A bare "F" or "francs" behind figures, or in words that say in what money figures are. */
const bareNames = '(?:f|frs?|francs?|franchi|francos|frank|franken)(?!\\p{L})';
const bare = new RegExp(`(?<!\\p{L})${bareNames}`, 'iu');
const behindFigures = new RegExp(
  `(?<![\\d.,])(\\d{1,3}(?:[.,'\u00a0\u202f ]\\d{3}){1,3}|\\d{1,7})(?:,(\\d\\d))?\\s?${bareNames}`,
  'giu',
);

/** Whether a text says "francs", and not whose. */
export const saysBareFrancs = (text: string): boolean => bare.test(text) && countriesOf(text).length === 0;

/** Amounts in francs without a country, each with its place. */
export function bareFrancs(text: string): { amount: number; start: number; end: number }[] {
  return [...text.matchAll(behindFigures)].map(({ 0: all, 1: whole, 2: cents, index }) => ({
    amount: Number(whole!.replace(/\D/g, '')) + Number(cents ?? 0) / 100,
    start: index,
    end: index + all.length,
  }));
}
