import { type Folded, foldWords, type Said, sourceRange } from './fold';
import { japanese } from './japanese';

/** Short words that are often the end or the middle of a longer one: "ブロック" holds "ロック", "ブルース" "ブルー". */
const shortKatakana = /^(?:タブ|ロック|ピンク|ブラス|グレー|ブルー|ウール|リネン)$/;
/** Words as a pattern over folded text has them as they stand. */
export const literally = (words: string): string => words.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** Longer than any phrase's gap between words needs to be, short enough to keep matching linear. */
const gap = '[\\s\\-_/]{1,3}';

/** What has to stand before and behind a phrase: nothing that would make it part of a longer word. */
type Edges = 'word' | 'opens' | 'closes' | 'none' | 'katakana';
/** Any letter or digit but Japanese ones: a name in Latin letters ends where they begin ("Ondrasse風"). */
const letter = '(?:(?![\\u3040-\\u30ff\\u3400-\\u9fff])[\\p{L}\\p{N}])';
const edgeSources: Record<Edges, [string, string]> = {
  word: [`(?<!${letter})`, `(?!${letter})`],
  opens: [`(?<!${letter})`, ''],
  closes: ['', `(?!${letter})`],
  none: ['', ''],
  katakana: ['(?<![\\u30a0-\\u30ff])', '(?![\\u30a0-\\u30ff])'],
};

/** Most phrases: words of plain letters. */
const plainWords = /^[a-z]+(?: [a-z]+)*$/;

function edgesOf(folded: string): Edges {
  if (plainWords.test(folded)) return 'word';
  if (shortKatakana.test(folded)) return 'katakana';
  if (japanese.test(folded)) return 'none';
  const opens = /^[\p{L}\p{N}*#]/u.test(folded);
  const closes = /[\p{L}\p{N}*#]$/u.test(folded);
  return opens ? (closes ? 'word' : 'opens') : closes ? 'closes' : 'none';
}

function bodyOf(folded: string): string {
  if (plainWords.test(folded)) return folded.replaceAll(' ', gap);
  const body = folded
    .split(' ')
    .map((word) => literally(word).replaceAll('\\*', '\\p{L}{0,12}').replaceAll('#', '\\d{1,6}'))
    .join(gap);
  return japanese.test(folded) ? body.replaceAll(gap, '\\s?') : body;
}

const digraphs: Record<string, string> = { ä: 'ae', ö: 'oe', ü: 'ue', ß: 'ss' };

/** A phrase folded, and where it has umlauts, as a keyboard without them writes it too: "Köper", "Koeper". */
export function spellingsOf(phrase: string): string[] {
  const small = phrase.toLowerCase();
  const typed = small.replace(/[äöüß]/gu, (letter) => digraphs[letter] as string);
  return (typed === small ? [phrase] : [phrase, typed]).map((one) => foldWords(one).text);
}
const allSpellings = (phrases: readonly string[]): string[] => [...new Set(phrases.flatMap(spellingsOf))];

/** Stands nowhere. */
const nothing = '(?!)';

/** One alternation for all phrases, longest first; what has to stand beside them is tested once for each kind. */
function sourceOf(phrases: readonly string[]): string {
  if (phrases.length === 0) return nothing;
  const byEdges = new Map<Edges, string[]>();
  for (const phrase of allSpellings(phrases).sort((a, b) => b.length - a.length)) {
    const edges = edgesOf(phrase);
    const bodies = byEdges.get(edges);
    if (bodies) bodies.push(bodyOf(phrase));
    else byEdges.set(edges, [bodyOf(phrase)]);
  }
  return [...byEdges]
    .map(([edges, bodies]) => `${edgeSources[edges][0]}(?:${bodies.join('|')})${edgeSources[edges][1]}`)
    .join('|');
}

/**
 * A pattern over folded text (`foldWords`) for any of the phrases, longest first. In a phrase, `*` stands for up to
 * twelve letters (endings of nouns and adjectives), `#` for a number, a space for a gap or hyphen. Words stand alone
 * except in Japanese, which has no spaces. No phrases stand nowhere.
 */
export const phrasePattern = (phrases: readonly string[], flags = 'gu'): RegExp => new RegExp(sourceOf(phrases), flags);

/** The same for asking whether, or where first, one of the phrases stands: it keeps no place between two texts. */
export const phraseTest = (phrases: readonly string[]): RegExp => phrasePattern(phrases, 'u');

/** A pattern over folded text, whose letters may be any script's. */
export const textPattern = (source: string): RegExp => new RegExp(source, 'u');

/** The phrases as alternatives of a pattern over folded text, longest first; what stands beside them is the pattern's own. */
export const anyOf = (phrases: readonly string[]): string =>
  allSpellings(phrases)
    .sort((a, b) => b.length - a.length)
    .map(bodyOf)
    .join('|');

/** A table from a value to the phrases that say it. */
export type PhraseTable<T extends string> = Record<T, readonly string[]>;

/** A phrase found: its range in the source, and in the folded text that was searched. */
export interface Hit<T> extends Said<T> {
  foldedStart: number;
  foldedEnd: number;
}

/** Gaps as one space, or none in Japanese: the form under which a phrase is looked up. */
const plain = (folded: string) => folded.replace(/[\s\-_/]+/g, japanese.test(folded) ? '' : ' ');

/** A search for all phrases of a table; where two phrases begin at one place, the longer wins. Made when first used. */
export function phraseFinder<T extends string>(table: PhraseTable<T>): (text: string | Folded) => Hit<T>[] {
  let find: ((text: string | Folded) => Hit<T>[]) | null = null;
  return (text) => {
    find ??= makeFinder(table);
    return find(text);
  };
}

function makeFinder<T extends string>(table: PhraseTable<T>): (text: string | Folded) => Hit<T>[] {
  const entries = (Object.entries(table) as [T, readonly string[]][]).flatMap(([value, phrases]) =>
    phrases.flatMap((phrase) => spellingsOf(phrase).map((spelling) => ({ value, phrase: spelling }))),
  );
  const pattern = phrasePattern(entries.map(({ phrase }) => phrase));
  const open = (phrase: string) => /[*#]/.test(phrase);
  // Later values win over earlier ones, as they do in an object literal.
  const exact = new Map(
    entries.filter(({ phrase }) => !open(phrase)).map(({ value, phrase }) => [plain(phrase), value]),
  );
  const endings = entries
    .filter(({ phrase }) => open(phrase))
    .sort((a, b) => b.phrase.length - a.phrase.length)
    .map(({ value, phrase }) => ({ value, whole: new RegExp(`^(?:${bodyOf(phrase)})$`, 'u') }));
  const valueSaid = (words: string) => exact.get(plain(words)) ?? endings.find(({ whole }) => whole.test(words))?.value;
  return (text) => {
    const folded = typeof text === 'string' ? foldWords(text) : text;
    const found: Hit<T>[] = [];
    for (const match of folded.text.matchAll(pattern)) {
      const [foldedStart, foldedEnd] = [match.index, match.index + match[0].length];
      const value = valueSaid(match[0]);
      if (value !== undefined)
        found.push({ value, foldedStart, foldedEnd, ...sourceRange(folded, foldedStart, foldedEnd) });
    }
    return found;
  };
}

/** A word list written as lines of phrases parted by a comma and a space. */
export const listOf = (...lines: string[]): string[] => lines.flatMap((line) => line.split(', '));
