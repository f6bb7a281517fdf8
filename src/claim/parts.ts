import {
  anyOf,
  clauseAround,
  type Folded,
  foldedSet,
  foldWords,
  type Hit,
  partWords,
  phraseFinder,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  textPattern,
  wordsOf,
} from '../text';
import type { Passage } from './passage';
import type { Part } from './types';

const find = phraseFinder(partWords);
/** "Borsa a tracolla", "sac à bandoulière": a kind of bag. */
const kindOfBag = textPattern(`(?:${phrasePattern(wordsOf('bag')).source})\\s(?:al?\\s)?$`);
/** "ショルダーバッグ": the word is half of what the bag is called. */
const bagBehind = /^(?:バッグ|バック|鞄|かばん)/u;

/** The parts of a piece that a folded text names, in its order. */
export const findParts = (folded: Folded): Hit<Part>[] =>
  (find(folded) as Hit<Part>[]).filter(
    ({ foldedStart, foldedEnd }) =>
      !kindOfBag.test(rightAhead(folded.text, foldedStart)) && !bagBehind.test(rightBehind(folded.text, foldedEnd)),
  );

/** Words for a strap by which a bag that hangs on one is called as well: "bandolera", "tracolla". */
const kinds = foldedSet(wordsOf('kind-of-piece'));
const alsoKind = partWords.strap.filter((word) => kinds.has(foldWords(word).text));
const opensAsKind = textPattern(
  `^[^\\p{L}]{0,4}(?:(?:${anyOf(wordsOf('offering', 'vintage', 'an', 'article', 'possessive'))})\\s){0,3}(?:${phrasePattern(alsoKind).source})`,
);
const severed = phraseTest([...wordsOf('bag', 'nothing-else', 'meant-for')]);
/** Whether a title calls the piece by such a word, and by no other: "Bandolera camel". */
const isCalledSo = (title: string): boolean => opensAsKind.test(title) && !severed.test(title);
/** How far into a text the piece may still be named. */
const opening = 40;

/** Whether a word for a strap names the piece: in a title that calls it so, and where its text opens. */
const namesPiece = ({ folded, title }: Passage, { value, foldedStart, foldedEnd }: Hit<Part>): boolean =>
  value === 'strap' &&
  foldedStart <= opening &&
  isCalledSo(title) &&
  kinds.has(folded.text.slice(foldedStart, foldedEnd));

/** "Cremallera interior", "fermeture intérieure": right behind a part the inside is an adjective, and no lining. */
const inner = /^inter(?:ior(?:es)?|ieure?s?|n[aoei])$/;
function withoutInner(text: string, parts: readonly Hit<Part>[]): Hit<Part>[] {
  return parts.filter(({ value, foldedStart, foldedEnd }, at) => {
    const before = parts[at - 1];
    if (value !== 'lining' || !before || !inner.test(text.slice(foldedStart, foldedEnd))) return true;
    return before.value === 'lining' || text.slice(before.foldedEnd, foldedStart) !== ' ';
  });
}

const known = new WeakMap<Passage, Hit<Part>[]>();
/** The parts that a passage names, looked for once. */
export function partsIn(from: Passage): Hit<Part>[] {
  const parts =
    known.get(from) ?? withoutInner(from.folded.text, findParts(from.folded)).filter((hit) => !namesPiece(from, hit));
  known.set(from, parts);
  return parts;
}

/**
 * The part that words of a text are most likely said of: the next one behind them in their clause, else the last one
 * before them; null where the clause names none.
 */
export function partBeside(text: string, start: number, end: number): Hit<Part> | null {
  const clause = clauseAround(text, start, end);
  const parts = findParts(foldWords(text.slice(clause.start, clause.end)));
  const behind = parts.find((part) => part.start + clause.start >= end);
  const before = parts.filter((part) => part.end + clause.start <= start);
  return behind ?? before[before.length - 1] ?? null;
}

/** Index of the first part that starts at or behind a place of the folded text; `parts` stand in its order. */
export function firstPartFrom(parts: readonly Hit<Part>[], place: number): number {
  let [low, high] = [0, parts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((parts[middle] as Hit<Part>).foldedStart < place) low = middle + 1;
    else high = middle;
  }
  return low;
}
