import { type Folded, foldWords, type Said, sourceRange } from './fold';

const cjk = /[\u3040-\u30ff\u3400-\u9fff]/;
const escapeWord = (word: string) => word.replace(/[.+?^${}()|[\]\\/]/g, '\\$&');

/** Longer than any phrase's gap between words needs to be, short enough to keep matching linear. */
const gap = '[\\s\\-_/]{1,3}';

function phraseSource(phrase: string): string {
  const folded = foldWords(phrase).text;
  const body = folded
    .split(' ')
    .map((word) => escapeWord(word).replaceAll('*', '\\p{L}{0,12}').replaceAll('#', '\\d{1,6}'))
    .join(gap);
  if (cjk.test(folded)) return body.replaceAll(gap, '\\s?');
  const opens = /^[\p{L}\p{N}*#]/u.test(folded) ? '(?<![\\p{L}\\p{N}])' : '';
  const closes = /[\p{L}\p{N}*#]$/u.test(folded) ? '(?![\\p{L}\\p{N}])' : '';
  return `${opens}${body}${closes}`;
}

/**
 * A pattern over folded text (`foldWords`) for any of the phrases, longest first. In a phrase, `*` stands for up to
 * twelve letters (endings of nouns and adjectives), `#` for a number, a space for a gap or hyphen. Words stand alone
 * except in Japanese, which has no spaces.
 */
export function phrasePattern(phrases: readonly string[], flags = 'gu'): RegExp {
  const ordered = [...phrases].sort((a, b) => b.length - a.length);
  return new RegExp(ordered.map(phraseSource).join('|'), flags);
}

/** A table from a value to the phrases that say it. */
export type PhraseTable<T extends string> = Record<T, readonly string[]>;

/** A phrase found: its range in the source, and in the folded text that was searched. */
export interface Hit<T> extends Said<T> {
  foldedStart: number;
  foldedEnd: number;
}

/** A search for all phrases of a table; where two phrases begin at one place, the longer wins. */
export function phraseFinder<T extends string>(table: PhraseTable<T>): (text: string | Folded) => Hit<T>[] {
  const entries = (Object.entries(table) as [T, readonly string[]][]).flatMap(([value, phrases]) =>
    phrases.map((phrase) => ({ value, phrase })),
  );
  entries.sort((a, b) => b.phrase.length - a.phrase.length);
  const pattern = new RegExp(entries.map(({ phrase }) => `(${phraseSource(phrase)})`).join('|'), 'gu');
  return (text) => {
    const folded = typeof text === 'string' ? foldWords(text) : text;
    const found: Hit<T>[] = [];
    for (const match of folded.text.matchAll(pattern)) {
      const group = match.findIndex((part, index) => index > 0 && part !== undefined);
      const entry = entries[group - 1];
      const [foldedStart, foldedEnd] = [match.index, match.index + match[0].length];
      if (entry)
        found.push({ value: entry.value, foldedStart, foldedEnd, ...sourceRange(folded, foldedStart, foldedEnd) });
    }
    return found;
  };
}

/** A word list written as lines of phrases parted by a comma and a space. */
export const listOf = (...lines: string[]): string[] => lines.flatMap((line) => line.split(', '));
