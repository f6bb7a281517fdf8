import type { Listing } from '../listing/types';
import { accessoryWords, findPlaces, foldWords, partWords, phrasePattern, tableWords, wordsOf } from '../text';
import { colourWords, materialWords } from './material-words';
import { type Passage, passagesOf } from './passage';

/** What a bag is called, in one word: "Velmont satchel" names a maker before it. */
const nouns = new Set(wordsOf('bag').map((word) => foldWords(word).text));

let known: RegExp | null = null;
const knownWords = (): RegExp => {
  known ??= phrasePattern([
    // What the piece is, how it looks, how it is sold. A word that is missing only makes the tool hold its tongue.
    ...wordsOf('plain-word', 'bag', 'piece', 'behind-new', 'new-bare'),
    ...accessoryWords,
    ...[colourWords, materialWords, partWords, tableWords('condition')].flatMap((table) => Object.values(table).flat()),
  ]);
  return known;
};

interface Word {
  /** As the listing writes it. */
  words: string;
  /** The folded word right behind it. */
  next: string;
  opensSentence: boolean;
}

/** Words of a passage that no list knows: they may be names. Numbers and words of one or two letters are none. */
function unknownWords({ folded, text: source }: Passage, others: readonly string[]): Word[] {
  const blank = (found: string) => ' '.repeat(found.length);
  let text = folded.text.slice(0, longest).replace(knownWords(), blank);
  if (others.length > 0) text = text.replace(phrasePattern(others), blank);
  const places = findPlaces(source.slice(0, longest));
  const sourceAt = (index: number) => (folded.at ? (folded.at[index] as number) : index);
  return [...text.matchAll(/(?<![\p{L}\p{N}])[\p{L}'’&.-]{3,}(?![\p{L}\p{N}])/gu)].flatMap((match): Word[] => {
    const [start, end] = [sourceAt(match.index), sourceAt(match.index + match[0].length - 1) + 1];
    if (!/\p{L}{3}/u.test(match[0]) || places.some((place) => place.start < end && start < place.end)) return [];
    const ahead = folded.text.slice(Math.max(0, match.index - 6), match.index);
    const behind = match.index + match[0].length;
    const next = /^[\s-]{0,3}(\p{L}{1,20})/u.exec(folded.text.slice(behind, behind + 24))?.[1] ?? '';
    const opensSentence = match.index < 4 || /[.!?:;\n•·-][\s"'(]{0,4}$/u.test(ahead);
    return [{ words: source.slice(start, end), next, opensSentence }];
  });
}
/** A name stands early; the rest of a novel is not searched for one. */
const longest = 3_000;

/** A word of the title that may be a maker's name that no file knows; null when every word is a plain one. */
export function unknownInTitle(passages: readonly Passage[], others: readonly string[] = []): string | null {
  const title = passages.find(({ field }) => field === 'title');
  return title ? (unknownWords(title, others)[0]?.words ?? null) : null;
}

/**
 * A word of the listing that may be a maker's name: any unknown one in the title; in running text one with a capital,
 * and at the start of a sentence only where a bag is named right behind it.
 */
export function possibleMakerName(
  listing: Pick<Listing, 'title' | 'description' | 'text' | 'language'>,
): string | null {
  const passages = passagesOf(listing);
  const inTitle = unknownInTitle(passages);
  if (inTitle !== null) return inTitle;
  const inText = passages.filter(({ field }) => field !== 'title').flatMap((from) => unknownWords(from, []));
  const name = inText.find(
    ({ words, next, opensSentence }) =>
      (/^\p{Lu}/u.test(words) && (!opensSentence || nouns.has(foldWords(next).text))) ||
      /[\u3040-\u30ff\u3400-\u9fff]/.test(words),
  );
  return name?.words ?? null;
}
