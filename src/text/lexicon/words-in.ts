import type { PhraseTable } from '../phrases';
import type { Lexicon } from './topics';

/** All words of some lists, whatever the language. */
export const wordsIn = (...lists: readonly Lexicon[]): string[] => lists.flatMap((list) => Object.values(list).flat());

/** The words of a table by the value that they say, whatever the language. */
export const wordsByValue = <V extends string>(table: Readonly<Record<V, Lexicon>>): PhraseTable<V> =>
  Object.fromEntries(
    Object.entries<Lexicon>(table).map(([value, words]) => [value, wordsIn(words)]),
  ) as unknown as PhraseTable<V>;
