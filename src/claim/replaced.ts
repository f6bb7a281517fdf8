import { anyOf, clauseAround, type Hit, isAboutAnother, isNegated, phrasePattern, topicFinder, wordsOf } from '../text';
import { findParts } from './parts';
import { type ClaimDraft, type Passage, saidIn } from './passage';
import type { Part } from './types';

const findWords = topicFinder('replaced', 'restored', 'new-before-part', 'new-behind-part');

/** What may be, should be or will be done was not: "the zip can be replaced", "muss ersetzt werden". */
const notYet = phrasePattern(wordsOf('not-yet'));
/** "Had to be replaced" is done. */
const done = phrasePattern(wordsOf('done'));

/** "Nothing was repaired": a denial that only these words make. */
const nothing = phrasePattern(wordsOf('nothing'));

const the = `(?:${anyOf(wordsOf('article'))})`;
const article = new RegExp(`^\\s{0,2}(?:(?:${the}|both|all)\\s?)?$`, 'u');
const and = new RegExp(
  `^\\s{0,2}(?:${anyOf([...wordsOf('and'), '&', '+'])})\\s{0,2}(?:${the}\\s)?(?:[\\p{L}-]+\\s)?$`,
  'u',
);
const comma = new RegExp(`^\\s?[,、・]\\s?(?:${the}\\s)?$`, 'u');
/** No list goes on longer. */
const longestList = 8;

/**
 * What the seller tells of parts that are not the maker's any more: each claim names the parts, or none where the piece
 * was restored without saying where. It speaks of what was done; denials, wishes and offers are left out.
 */
export function replacedClaims(passages: Passage[]): ClaimDraft[] {
  return passages.flatMap((from) => {
    const parts = findParts(from.folded);
    return findWords(from.folded).flatMap((word): ClaimDraft[] => {
      const { text } = from.folded;
      if (isLeftOut(text, word)) return [];
      const named = partsOf(text, parts, word);
      if (named.length === 0 && word.value !== 'restored') return [];
      const start = Math.min(word.start, ...named.map((part) => part.start));
      const end = Math.max(word.end, ...named.map((part) => part.end));
      const words = from.text.slice(start, end);
      const each = [...new Set(named.map(({ value }) => value))];
      return [{ kind: 'replaced', parts: each, ...saidIn(from, { start, end, words }, 0.85) }];
    });
  });
}

function isLeftOut(text: string, { foldedStart, foldedEnd, words }: Hit<string>): boolean {
  // "Not original" is a denial only of what it is not.
  if (!/original/iu.test(words) && isNegated(text, foldedStart, foldedEnd)) return true;
  if (isAboutAnother(text, foldedStart, foldedEnd)) return true;
  const clause = clauseAround(text, foldedStart, foldedEnd);
  const near = `${text.slice(Math.max(clause.start, foldedStart - 40), foldedStart)}|${text.slice(foldedEnd, Math.min(clause.end, foldedEnd + 20))}`;
  return near.search(nothing) >= 0 || near.replace(done, '').search(notYet) >= 0;
}

/** The parts that the word is said of: those right behind it ("replaced zip and lining"), else those before it. */
function partsOf(text: string, parts: readonly Hit<Part>[], word: Hit<string>): Hit<Part>[] {
  const next = firstFrom(parts, word.foldedEnd);
  const behind = listFrom(text, parts, next, word.foldedEnd);
  if (behind.length > 0 || word.value === 'new-before-part') return behind;
  const last = parts[next - 1];
  // "The dust bag is new" tells nothing of the piece.
  if (word.value === 'new-behind-part' && last?.value === 'dust-bag') return [];
  // A word that holds a part itself ("relined" does not, "neu gefüttert" does) is said of that part.
  if (last && last.foldedEnd > word.foldedStart) return [last];
  if (!last || last.foldedStart < clauseAround(text, word.foldedStart, word.foldedEnd).start) return ownPart(word);
  if (and.test(text.slice(last.foldedEnd, word.foldedStart))) return ownPart(word);
  return [...listBefore(text, parts, next - 1), last];
}

/** "Relined" names its part without saying its name. */
function ownPart({ value, words, ...rest }: Hit<string>): Hit<Part>[] {
  const part = /^re-?lined/iu.test(words) ? 'lining' : /^rezipped/iu.test(words) ? 'zip' : null;
  const stitched = /^restitched/iu.test(words) ? 'stitching' : part;
  return stitched ? [{ ...rest, words, value: stitched }] : [];
}

/** Index of the first part that starts at or behind a place. */
function firstFrom(parts: readonly Hit<Part>[], place: number): number {
  let [low, high] = [0, parts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((parts[middle] as Hit<Part>).foldedStart < place) low = middle + 1;
    else high = middle;
  }
  return low;
}

function listFrom(text: string, parts: readonly Hit<Part>[], first: number, place: number): Hit<Part>[] {
  const start = parts[first];
  if (!start || !article.test(text.slice(place, start.foldedStart))) return [];
  const list = [start];
  for (const part of parts.slice(first + 1, first + longestList)) {
    const gap = text.slice((list[list.length - 1] as Hit<Part>).foldedEnd, part.foldedStart);
    if (gap.length > 24 || !(and.test(gap) || comma.test(gap))) break;
    list.push(part);
  }
  return list;
}

/** The parts joined to one by "and", and by commas before that: a comma alone may part two statements. */
function listBefore(text: string, parts: readonly Hit<Part>[], last: number): Hit<Part>[] {
  const list: Hit<Part>[] = [];
  for (let at = last; at > 0 && list.length < longestList; at -= 1) {
    const [before, part] = [parts[at - 1] as Hit<Part>, parts[at] as Hit<Part>];
    const gap = text.slice(before.foldedEnd, part.foldedStart);
    if (gap.length > 24 || !(and.test(gap) || (list.length > 0 && comma.test(gap)))) break;
    list.unshift(before);
  }
  return list;
}
