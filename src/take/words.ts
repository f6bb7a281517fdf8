import { type Folded, foldWords, type Hit, phraseFinder } from '../text';
import words from './words.json' with { type: 'json' };

/** The languages in which pages that tell of makers are read. */
export type TellingLanguage = 'en' | 'fr' | 'de' | 'it' | 'es' | 'nl' | 'ja';

/**
 * What such pages write, by topic and language. Own lists, common practice, no source. A topic that lacks a language
 * does not compile, and a test holds each list filled.
 */
const topics = words satisfies Record<string, Readonly<Record<TellingLanguage, readonly string[]>>>;
export type TellingTopic = keyof typeof topics;

const listed = (topic: TellingTopic): string[] => Object.values<readonly string[]>(topics[topic]).flat();

/** A search for the words of several topics, in any language: a page mixes them, and often does not say its own. */
export const tellingFinder = <T extends TellingTopic>(...names: T[]): ((text: string | Folded) => Hit<T>[]) =>
  phraseFinder(Object.fromEntries(names.map((name) => [name, listed(name)])) as Record<T, string[]>);

/** Whether a folded text is, as a whole, one of a topic's words. */
export function wholeWords(topic: TellingTopic): ReadonlySet<string> {
  return new Set(listed(topic).map((word) => foldWords(word).text));
}
