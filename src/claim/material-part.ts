import {
  anyOf,
  clauseAround,
  clauseBeforeComma,
  foldedSet,
  type Hit,
  phrasePattern,
  textPattern,
  wordsOf,
} from '../text';
import type { Group } from './material-of-piece';
import { firstPartFrom, partsIn } from './parts';
import type { Passage } from './passage';
import type { Part } from './types';

const joinsOnward = /^[\s-]{0,2}(?:の|な|い)?$/u;
/** Words that link a part to what it is made of, in folded text. */
const links = foldedSet([...wordsOf('link-to-material'), "'s", "'re"]);
/** A link right before the words: "lining in suede". */
const linkBefore = textPattern(`(?:${phrasePattern(wordsOf('is', 'made-of')).source}|:)\\s{0,2}$`);
/** Words that stand between without changing what is said. */
const fillers = foldedSet(wordsOf('beside-material'));

/**
 * Whether a part's description goes on to the words behind this gap: only links and fillers stand in it, or one other
 * word beside a link ("Futter besteht komplett aus …").
 */
function follows(gap: string): boolean {
  if (/[.!?;\n。、]|,\s/.test(gap)) return false;
  const words = gap.match(/[\p{L}\d']+/gu) ?? [];
  const others = words.filter((word) => !links.has(word) && !fillers.has(word) && !/^\d{4}$/.test(word));
  const linked = /[:=]/.test(gap) || words.some((word) => links.has(word));
  return words.length <= 6 && (others.length === 0 || (linked && others.length === 1));
}

/** English and its kin put the material before the part; Romance languages put it behind. Japanese has both, with particles. */
const partFirst = (language: string | null) => /^(?:fr|it|es)/.test(language ?? '');

type Range = Pick<Group, 'start' | 'end'>;

/** The part that a description is of: right behind it, right before it with "is", "in" …, else none. */
export function partOf(text: string, group: Range, parts: Hit<Part>[], language: string | null): Hit<Part> | null {
  const clause = clauseAround(text, group.start, group.end);
  // "Algodón estampado" is a cotton, and no pattern.
  const inside = parts.find(
    ({ value, foldedStart, foldedEnd }) => value !== 'pattern' && foldedStart < group.end && foldedEnd > group.start,
  );
  if (inside) return inside;
  const next = parts.find((part) => part.foldedStart >= group.end && part.foldedStart < clause.end);
  const before = parts.filter((part) => part.foldedEnd <= group.start && part.foldedStart >= clause.start);
  const previous = before[before.length - 1];
  const apart = previous
    ? null
    : (partOfBracket(text, clause.start, parts) ?? partByItself(text, clause, group, parts));
  if (apart) return apart;
  const behind = next && joinsOnward.test(text.slice(group.end, next.foldedStart)) ? next : null;
  const gap = text.slice(previous?.foldedEnd, group.start);
  const ahead = previous && gap.length <= 48 && follows(gap) ? previous : null;
  if (ahead && behind) return partFirst(language) || linkBefore.test(gap) ? ahead : behind;
  return behind ?? ahead;
}

/** "Fodera ok (camoscio ruggine)": what brackets hold is said of the part right ahead of them. */
function partOfBracket(text: string, start: number, parts: Hit<Part>[]): Hit<Part> | null {
  if (text[start - 1] !== '(') return null;
  const last = parts.filter((part) => part.foldedEnd < start).at(-1);
  const gap = last ? text.slice(last.foldedEnd, start - 1) : '';
  return last && /^(?:\s[\p{L}']{1,12}){0,5}\s?$/u.test(gap) ? last : null;
}

/** "Lining, red suede": a part that is all that its clause names, and behind a comma nothing but what it is made of. */
function partByItself(text: string, clause: Range, group: Range, parts: Hit<Part>[]): Hit<Part> | null {
  const own = text.slice(clause.start, group.start) + text.slice(group.end, clause.end);
  const before = /[\p{L}\d]/u.test(own) ? null : clauseBeforeComma(text, clause.start);
  const last = before && parts.findLast((part) => part.foldedEnd <= before.end);
  if (!last) return null;
  const [ahead, behind] = [text.slice(before.start, last.foldedStart), text.slice(last.foldedEnd, before.end)];
  return opensWithPart.test(ahead) && behind.trim() === '' ? last : null;
}
const opensWithPart = textPattern(`^\\s{0,3}(?:(?:${anyOf(wordsOf('article', 'possessive'))})\\s?)?$`);

/** The part that a description at this place is of; null where it is of none, or of the body. */
export function partDescribed(from: Passage, start: number, end: number): Exclude<Part, 'body'> | null {
  const part = partOf(from.folded.text, { start, end }, partsNear(partsIn(from), { start }), from.language)?.value;
  return part === undefined || part === 'body' ? null : part;
}

/** Further away than any clause reaches. */
const reach = 400;

/** The parts around a group, out of all in the order of the text: asking each group for all parts would cost their product. */
export function partsNear(parts: Hit<Part>[], { start }: Pick<Group, 'start'>): Hit<Part>[] {
  return parts.slice(firstPartFrom(parts, start - reach), firstPartFrom(parts, start + reach + 1));
}
