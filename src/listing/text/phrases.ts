import { type Folded, foldWords, type Said, sourceRange } from './fold';

const cjk = /[\u3040-\u30ff\u3400-\u9fff]/;
const escapeWord = (word: string) => word.replace(/[.+?^${}()|[\]\\/]/g, '\\$&');

/** Longer than any phrase's gap between words needs to be, short enough to keep matching linear. */
const gap = '[\\s\\-_/]{1,3}';
/**
 * Letters of folded text: small Latin, Greek and Cyrillic. Four ranges, because a pattern with `\p{L}` in hundreds of
 * places takes a browser seconds to compile.
 */
const letter = 'a-z\\u00df-\\u024f\\u0370-\\u04ff';
const opensWord = /^[\p{L}\p{N}*#]/u;
const closesWord = /[\p{L}\p{N}*#]$/u;

function phraseBody(folded: string): string {
  const body = folded
    .split(' ')
    .map((word) => escapeWord(word).replaceAll('*', `[${letter}]{0,12}`).replaceAll('#', '\\d{1,6}'))
    .join(gap);
  return cjk.test(folded) ? body.replaceAll(gap, '\\s?') : body;
}

const startOf = (folded: string) => (!cjk.test(folded) && opensWord.test(folded) ? `(?<![${letter}\\d])` : '');
const endOf = (folded: string) => (!cjk.test(folded) && closesWord.test(folded) ? `(?![${letter}\\d])` : '');

/**
 * A pattern over folded text (`foldWords`) for any of the phrases, longest first. In a phrase, `*` stands for up to
 * twelve letters (endings of nouns and adjectives), `#` for a number, a space for a gap or hyphen. Words stand alone
 * except in Japanese, which has no spaces. Phrases with the same kind of ends share them, to keep the pattern small.
 */
export function phrasePattern(phrases: readonly string[], flags = 'gu'): RegExp {
  const ordered = [...phrases].sort((a, b) => b.length - a.length).map((phrase) => foldWords(phrase).text);
  const byEnds = new Map<string, string[]>();
  for (const folded of ordered) {
    const ends = `${startOf(folded)}\n${endOf(folded)}`;
    byEnds.set(ends, [...(byEnds.get(ends) ?? []), phraseBody(folded)]);
  }
  const groups = [...byEnds].map(([ends, bodies]) => ends.replace('\n', () => `(?:${bodies.join('|')})`));
  return new RegExp(groups.join('|'), flags);
}

/** A table from a value to the phrases that say it. */
export type PhraseTable<T extends string> = Record<T, readonly string[]>;

/** A phrase found: its range in the source, and in the folded text that was searched. */
export interface Hit<T> extends Said<T> {
  foldedStart: number;
  foldedEnd: number;
}

interface Entry<T> {
  value: T;
  /** What the phrase begins with, up to its first gap or open place. */
  prefix: string;
  /** Whether it begins at the start of a word only. */
  atWord: boolean;
  source: string;
  /** Compiled when its prefix is first met: a text meets few of the phrases. */
  pattern: RegExp | null;
}

function entryOf<T>(value: T, phrase: string): Entry<T> {
  const folded = foldWords(phrase).text;
  const source = `${startOf(folded)}${phraseBody(folded)}${endOf(folded)}`;
  return { value, prefix: /^[^ *#]*/.exec(folded)?.[0] ?? '', atWord: startOf(folded) !== '', source, pattern: null };
}

const digits = '0123456789';
const isWordUnit = (code: number) =>
  (code >= 0x61 && code <= 0x7a) ||
  (code >= 0x30 && code <= 0x39) ||
  (code >= 0xdf && code <= 0x24f) ||
  (code >= 0x370 && code <= 0x4ff);

/** A search for all phrases of a table; where two phrases begin at one place, the longer wins. Matches never overlap. */
export function phraseFinder<T extends string>(table: PhraseTable<T>): (text: string | Folded) => Hit<T>[] {
  let byFirst: Map<string, Entry<T>[]> | null = null;
  return (text) => {
    byFirst ??= indexPhrases(table);
    const folded = typeof text === 'string' ? foldWords(text) : text;
    const found: Hit<T>[] = [];
    for (let at = 0; at < folded.text.length; at += 1) {
      const entries = byFirst.get(folded.text[at] as string);
      if (!entries) continue;
      const insideWord = at > 0 && isWordUnit(folded.text.charCodeAt(at - 1));
      for (const entry of entries) {
        if ((entry.atWord && insideWord) || !folded.text.startsWith(entry.prefix, at)) continue;
        entry.pattern ??= new RegExp(entry.source, 'uy');
        entry.pattern.lastIndex = at;
        if (!entry.pattern.test(folded.text)) continue;
        const foldedEnd = entry.pattern.lastIndex;
        found.push({ value: entry.value, foldedStart: at, foldedEnd, ...sourceRange(folded, at, foldedEnd) });
        at = foldedEnd - 1;
        break;
      }
    }
    return found;
  };
}

/** Phrases by the unit that they begin with, longest first; those that begin with a number or ending by every such unit. */
function indexPhrases<T extends string>(table: PhraseTable<T>): Map<string, Entry<T>[]> {
  const pairs = (Object.entries(table) as [T, readonly string[]][]).flatMap(([value, phrases]) =>
    phrases.map((phrase) => ({ value, phrase })),
  );
  pairs.sort((a, b) => b.phrase.length - a.phrase.length);
  const byFirst = new Map<string, Entry<T>[]>();
  for (const { value, phrase } of pairs) {
    const entry = entryOf(value, phrase);
    const units =
      entry.prefix !== ''
        ? (entry.prefix[0] as string)
        : phrase.startsWith('#')
          ? digits
          : `abcdefghijklmnopqrstuvwxyz${digits}`;
    for (const unit of units) {
      const known = byFirst.get(unit);
      if (known) known.push(entry);
      else byFirst.set(unit, [entry]);
    }
  }
  return byFirst;
}

/** A word list written as lines of phrases parted by a comma and a space. */
export const listOf = (...lines: string[]): string[] => lines.flatMap((line) => line.split(', '));
