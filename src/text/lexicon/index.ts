import type { Folded } from '../fold';
import { type Hit, phraseFinder } from '../phrases';
import { topics } from './topics';
import { wordsIn } from './words-in';

export { tableWords } from './tables';
export { type Lexicon, topics } from './topics';

export type Topic = keyof typeof topics;

/** All words of the topics, whatever the language: a listing mixes languages, and often does not say its own. */
export const wordsOf = (...names: Topic[]): string[] => wordsIn(...names.map((name) => topics[name]));

/** Of some words those that no topic of these has. */
export function wordsWithout(words: readonly string[], ...names: Topic[]): string[] {
  const left = new Set(wordsOf(...names));
  return words.filter((one) => !left.has(one));
}

/** A search for the words of several topics at once; each hit says of which topic it is. */
export const topicFinder = <T extends Topic>(...names: T[]): ((text: string | Folded) => Hit<T>[]) =>
  phraseFinder(Object.fromEntries(names.map((name) => [name, wordsOf(name)])) as Record<T, string[]>);
