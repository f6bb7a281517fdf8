import {
  aheadInClause,
  anyLanguage,
  anyOf,
  clauseAround,
  clauseBeforeComma,
  foldWords,
  type Hit,
  jointWords,
  phrasePattern,
  phraseTest,
  rightBehind,
  sentenceAround,
  textPattern,
  topics,
  wordsOf,
} from '../text';
import { firstPartFrom } from './parts';
import type { Passage } from './passage';
import type { Part } from './types';

/** "Relined", on folded text: it names its part without saying its name. */
export const relined = /^(?:re-?lined|neu gefuttert|redoublee?|rifoderat[ao]|opnieuw gevoerd)$/u;

const the = `(?:${anyOf(wordsOf('article', 'an'))})`;
const article = textPattern(`^\\s{0,2}(?:(?:${the}|both|all)\\s?)?$`);
const and = textPattern(
  `^\\s{0,2}(?:${anyOf([...wordsOf('and'), '&', '+'])})\\s{0,2}(?:${the}\\s)?(?:[\\p{L}-]+\\s)?$`,
);
const comma = new RegExp(`^\\s?[,、・]\\s?(?:${the}\\s)?$`);
/** No list goes on longer. */
const longestList = 8;

/** The parts that the word is said of: those right behind it ("replaced zip and lining"), else those before it. */
export function partsOf(from: Passage, parts: readonly Hit<Part>[], word: Hit<string>): Hit<Part>[] {
  const { text } = from.folded;
  const next = firstPartFrom(parts, word.foldedEnd);
  const behind = listFrom(text, parts, next, word.foldedEnd);
  if (behind.length > 0) return behind;
  const last = parts[next - 1];
  if (word.value === 'new-before-part') return adjectiveBehind(from, last, word);
  // "The dust bag is new" tells nothing of the piece.
  if (word.value === 'new-behind-part' && last?.value === 'dust-bag') return [];
  // A word that holds a part itself ("relined" does not, "neu gefüttert" does) is said of that part.
  if (last && last.foldedEnd > word.foldedStart) return [last];
  const clause = clauseAround(text, word.foldedStart, word.foldedEnd);
  if (!last || last.foldedStart < clause.start) {
    const own = ownPart(word);
    if (!last || own.length > 0) return own;
    const isOfLast =
      takesUp(text, clause.start, word, last) ||
      isInItsBracket(text, clause.start, last) ||
      isSubjectBefore(text, clause.start, word, last);
    return isOfLast ? [last] : [];
  }
  // Folded, the Italian "is" reads as "and": "la cerniera è stata sostituita".
  const isVerb = /(?:^|\s)[èÈ]\s/u.test(from.text.slice(last.end, word.start));
  if (!isVerb && and.test(text.slice(last.foldedEnd, word.foldedStart))) return ownPart(word);
  return [...listBefore(text, parts, next - 1), last];
}

const { fr, it, es } = topics['new-before-part'];
const romanceNew = textPattern(`^(?:${phrasePattern([...fr, ...it, ...es, ...topics['new-bare'].fr]).source})`);
/** "Cierre nuevo", "cerniera nuova": right behind the part, as Romance languages have it. */
function adjectiveBehind(from: Passage, part: Hit<Part> | undefined, word: Hit<string>): Hit<Part>[] {
  const { text } = from.folded;
  const isRomance = romanceNew.test(text.slice(word.foldedStart, word.foldedEnd));
  return part && isRomance && part.value !== 'dust-bag' && text.slice(part.foldedEnd, word.foldedStart) === ' '
    ? [part]
    : [];
}

/** "Correa no original (sustituida en 2011)": a bracket right behind the part. */
const isInItsBracket = (text: string, clauseStart: number, { value, foldedEnd }: Hit<Part>): boolean =>
  value !== 'dust-bag' &&
  text[clauseStart - 1] === '(' &&
  /^(?:\s\p{L}{1,12}){0,3}\s?$/u.test(text.slice(foldedEnd, clauseStart - 1));

const pronoun = textPattern(`(?:${phraseTest(wordsOf('object-pronoun')).source})(?:\\s\\p{L}{1,12}){0,2}\\s?$`);
const pronounBehind = textPattern(`^\\s(?:${phraseTest(topics['object-pronoun'].en).source})`);
/** "The strap broke, I replaced it in 2018": the part that the sentence named last. */
function takesUp(text: string, clauseStart: number, word: Hit<string>, last: Hit<Part>): boolean {
  if (last.value === 'dust-bag' || last.foldedStart < sentenceAround(text, word.foldedStart, word.foldedEnd).start)
    return false;
  return (
    pronoun.test(text.slice(clauseStart, word.foldedStart)) || pronounBehind.test(rightBehind(text, word.foldedEnd))
  );
}

/** "ストラップは切れたので、…付け替えました": what a Japanese sentence spoke of goes on. */
const japaneseSubject = /^(?:は|が|も)/;
/** "The zip was torn, replaced 2019": nothing stands ahead of the word, and the clause before it is of one part. */
function isSubjectBefore(text: string, clauseStart: number, { value, foldedStart }: Hit<string>, last: Hit<Part>) {
  if (value !== 'replaced' || last.value === 'dust-bag') return false;
  if (last.foldedStart < sentenceAround(text, foldedStart, foldedStart).start) return false;
  if (japaneseSubject.test(text.slice(last.foldedEnd, last.foldedEnd + 1))) return true;
  const before = clauseBeforeComma(text, clauseStart);
  return before !== null && last.foldedStart >= before.start && text.slice(clauseStart, foldedStart).trim() === '';
}

/** The part that a word for its repair names itself. */
function ownPart({ value, words, ...rest }: Hit<string>): Hit<Part>[] {
  const part = relined.test(foldWords(words).text) ? 'lining' : /^rezipped/iu.test(words) ? 'zip' : null;
  const stitched = /^restitched/iu.test(words) ? 'stitching' : part;
  return stitched ? [{ ...rest, words, value: stitched }] : [];
}

/** "New zip, lining as new": what has words of its own behind it is no item of the list. A year, or who did it, may follow. */
const closesItem = textPattern(
  `^\\s{0,2}(?:$|[,;.!?:()\\n、。・&+/\\d–—-]|(?:${anyOf(wordsOf('and'))})\\s|(?:${anyLanguage(jointWords.doneBy)}|${anyLanguage(jointWords.inPlace)})\\s|を|が|は)`,
);

function listFrom(text: string, parts: readonly Hit<Part>[], first: number, place: number): Hit<Part>[] {
  const start = parts[first];
  if (!start || !article.test(text.slice(place, start.foldedStart))) return [];
  const list = [start];
  for (const part of parts.slice(first + 1, first + longestList)) {
    const gap = text.slice((list[list.length - 1] as Hit<Part>).foldedEnd, part.foldedStart);
    if (gap.length > 24 || !(and.test(gap) || (comma.test(gap) && closesItem.test(rightBehind(text, part.foldedEnd)))))
      break;
    list.push(part);
  }
  return list;
}

const worn = phraseTest(wordsOf('wear'));
/** "Scratches on the base and the zip was replaced": what shows wear is said of the part, and the repair of the next. */
const isPlaceOfWear = (text: string, { foldedStart }: Hit<Part>): boolean =>
  worn.test(aheadInClause(text, foldedStart));

/** The parts joined to one by "and", and by commas before that: a comma alone may part two statements. */
function listBefore(text: string, parts: readonly Hit<Part>[], last: number): Hit<Part>[] {
  const list: Hit<Part>[] = [];
  for (let at = last; at > 0 && list.length < longestList; at -= 1) {
    const [before, part] = [parts[at - 1] as Hit<Part>, parts[at] as Hit<Part>];
    const gap = text.slice(before.foldedEnd, part.foldedStart);
    if (gap.length > 24 || !(and.test(gap) || (list.length > 0 && comma.test(gap)))) break;
    if (isPlaceOfWear(text, before)) break;
    list.unshift(before);
  }
  return list;
}
