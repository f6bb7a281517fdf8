import { type Folded, foldedSet, type Hit, type Lexicon, phraseFinder } from '../text';
import words from './words.json' with { type: 'json' };

/**
 * What pages that tell of makers write, by topic and language. Own lists, common practice, no source. Of the lexicon's
 * form, and held by its test; apart from it, because a word means something else over a column than in a listing ("code",
 * "from", "made"), and no listing is read by these.
 */
const topics = words satisfies Record<string, Lexicon>;
export type TellingTopic = keyof typeof topics;

/** All of a topic's words. */
export const wordsFor = (topic: TellingTopic): string[] => Object.values<readonly string[]>(topics[topic]).flat();

/** A search for the words of several topics, in any language: a page mixes them, and often does not say its own. */
export const tellingFinder = <T extends TellingTopic>(...names: T[]): ((text: string | Folded) => Hit<T>[]) =>
  phraseFinder(Object.fromEntries(names.map((name) => [name, wordsFor(name)])) as Record<T, string[]>);

/** Every word of every topic, folded: what is no name by itself. */
export const allWords: ReadonlySet<string> = foldedSet(
  Object.values<Lexicon>(topics).flatMap((topic) => Object.values<readonly string[]>(topic).flat()),
);

/** Whether a folded text is, as a whole, one of a topic's words. */
export function wholeWords(topic: TellingTopic): ReadonlySet<string> {
  return foldedSet(wordsFor(topic));
}
