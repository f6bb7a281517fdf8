import * as z from 'zod';
import { foldWords } from '../../../src/text';

/** The languages that every list of what people write has words of. */
export const languages = ['en', 'fr', 'de', 'it', 'es', 'nl', 'ja'] as const;
const phrase = z.string().regex(/^\S(?:.*\S)?$/u, 'no blank at either end');

/** A list of what people write: in each language at least one phrase, and nothing else. */
export const lexiconSchema = z.strictObject(
  Object.fromEntries(languages.map((language) => [language, z.array(phrase).min(1)])),
);

/** As phrases are looked up: gaps and hyphens are one. */
export const plain = (words: string) => foldWords(words).text.replace(/[\s\-_/]+/g, ' ');

/** Phrases that stand twice in one language after folding. */
export const twiceIn = (lexicon: Record<string, readonly string[]>): string[] =>
  Object.values(lexicon).flatMap((words) => {
    const folded = words.map(plain);
    return folded.filter((one, index) => folded.indexOf(one) !== index);
  });
