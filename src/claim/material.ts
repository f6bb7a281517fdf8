import type { Listing } from '../listing/types';
import type { MakerFile } from '../maker/types';
import {
  anyOf,
  clauseAround,
  clauseBeforeComma,
  foldWords,
  type Hit,
  isAboutAnother,
  isLeftOpen,
  isNegated,
  phraseFinder,
  phrasePattern,
  rightAhead,
  type Topic,
  textPattern,
  wordsOf,
} from '../text';
import { rememberForMakers } from './by-makers';
import { isOfCompanion } from './goods';
import { isLikened } from './look';
import { type Group, isBareBrass, isOfMetal, isOfPiece, isOfTitle } from './material-of-piece';
import { colourWords, materialWords } from './material-words';
import { notPlaced } from './not-placed';
import { findParts } from './parts';
import { type ClaimDraft, type Passage, saidIn, saidInData } from './passage';
import { isOfAccessory } from './subject';
import type { Part } from './types';

/** Joints inside one description: "red and black", "gold-tone", "brown grained calf", "di pelle rossa". */
const within = textPattern(
  `^(?:の|色の|系の)$|^[\\s-]{0,2}(?:(?:${anyOf([...wordsOf('joint-in-material'), '&', '/'])})[\\s-]{1,2}){0,2}$`,
);
const joinsOnward = /^[\s-]{0,2}(?:の|な|い)?$/u;
const setOf = (topic: Topic) => new Set(wordsOf(topic).map((word) => foldWords(word).text));
/** Words that link a part to what it is made of, in folded text. */
const links = setOf('link-to-material');
/** A link right before the words: "lining in suede". */
const linkBefore = textPattern(`(?:${phrasePattern(wordsOf('is', 'made-of')).source}|:)\\s{0,2}$`);
/** Words that stand between without changing what is said. */
const fillers = setOf('beside-material');

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

interface Vocabulary {
  find: (from: Passage) => Hit<string>[];
  materials: Set<string>;
}

/** The words that a material claim is looked up by: the general ones and those of the maker files, which win. */
const vocabularyOf = rememberForMakers((makers): Vocabulary => {
  const own = new Set<string>();
  for (const { construction } of makers)
    for (const fact of construction)
      for (const words of [fact.is, ...(fact.also ?? []), ...(fact.not ?? [])]) own.add(words.toLowerCase());
  const table: Record<string, readonly string[]> = { ...colourWords, ...materialWords };
  for (const words of own) table[words] = [...(table[words] ?? []), words];
  const materials = new Set([...Object.keys(materialWords), ...own]);
  const find = phraseFinder(table);
  return { find: (from) => find(from.folded), materials };
});

/** Neighbouring colour and material words as one description: "dark" + "red" + "suede". */
function groups(from: Passage, hits: Hit<string>[], materials: Set<string>): Group[] {
  const found: Group[] = [];
  for (const hit of hits) {
    const last = found[found.length - 1];
    const gap = last ? from.folded.text.slice(last.end, hit.foldedStart) : '';
    if (last && within.test(gap)) {
      last.words.push(hit.value);
      last.end = hit.foldedEnd;
      last.sourceEnd = hit.end;
      last.hasMaterial ||= materials.has(hit.value);
    } else
      found.push({
        words: [hit.value],
        start: hit.foldedStart,
        end: hit.foldedEnd,
        sourceStart: hit.start,
        sourceEnd: hit.end,
        hasMaterial: materials.has(hit.value),
      });
  }
  return found.filter(
    (group) =>
      !isNegated(from.folded.text, group.start, group.end) &&
      !isAboutAnother(from.folded.text, group.start, group.end) &&
      !isLeftOpen(from.folded.text, group.start, group.end) &&
      !isLikened(from.folded.text, group.start, group.end) &&
      !isOfAccessory(from.folded.text, group.start, group.end, from.title) &&
      !isOfCompanion(from.folded.text, group.start, group.end),
  );
}

/** Colours first, as English has them: "daim rouge" is "red suede". */
const materialOf = ({ words }: Group, materials: Set<string>) =>
  [...words.filter((word) => !materials.has(word)), ...words.filter((word) => materials.has(word))].join(' ');

/** English and its kin put the material before the part; Romance languages put it behind. Japanese has both, with particles. */
const partFirst = (language: string | null) => /^(?:fr|it|es)/.test(language ?? '');

/** The part that a description is of: right behind it, right before it with "is", "in" …, else none. */
type Range = Pick<Group, 'start' | 'end'>;
function partOf(text: string, group: Range, parts: Hit<Part>[], language: string | null): Hit<Part> | null {
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

const known = new WeakMap<Passage, Hit<Part>[]>();
function partsIn(from: Passage): Hit<Part>[] {
  const parts = known.get(from) ?? findParts(from.folded);
  known.set(from, parts);
  return parts;
}

/** Further away than any clause reaches. */
const reach = 400;

/** The parts around a group, out of all in the order of the text: asking each group for all parts would cost their product. */
function partsNear(parts: Hit<Part>[], group: Pick<Group, 'start'>): Hit<Part>[] {
  let [low, high] = [0, parts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((parts[middle] as Hit<Part>).foldedStart < group.start - reach) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while (end < parts.length && (parts[end] as Hit<Part>).foldedStart <= group.start + reach) end += 1;
  return parts.slice(low, end);
}

/** "Garnitures en laiton": trim of metal is the fittings. */
const fittingsOf = (part: Hit<Part> | null, group: Group): Hit<Part> | null =>
  part?.value === 'trim' && isOfMetal(group) ? { ...part, value: 'hardware' } : part;

const subject = textPattern(`(?:${phrasePattern(wordsOf('is')).source})\\s(?:${anyOf(wordsOf('article'))})\\s?$`);
/** "Am Boden ist das Leder abgewetzt": the leather is what the clause is of, and not what the base is made of. */
const isBareSubject = (text: string, { words, start }: Group): boolean =>
  words.length === 1 && words[0] === 'leather' && subject.test(rightAhead(text, start));

/** What the page's own field calls the maker, as a pattern: "Velluto" is velvet in small letters only. */
function nameIn({ maker }: Listing): RegExp | null {
  const name = maker[0]?.value.trim();
  return name && name.length <= longestName ? phrasePattern([name]) : null;
}
const longestName = 60;
/** Where a name that stands at a place of a passage ends, by each of its places: looked for once, however many groups ask. */
const endsOfName = ({ folded }: Passage, name: RegExp | null): ReadonlyMap<number, number> =>
  new Map(
    Array.from(name ? folded.text.matchAll(name) : []).flatMap(({ index, 0: found }) =>
      Array.from({ length: found.length }, (_, at) => [index + at, index + found.length] as const),
    ),
  );
const isOfName = ({ text }: Passage, group: Group, ends: ReadonlyMap<number, number>): boolean =>
  group.end <= (ends.get(group.start) ?? 0) && /^\p{Lu}/u.test(text.slice(group.sourceStart, group.sourceStart + 2));

/** Materials and colours per part. Without a part near, a material beside a word for the piece is the body's. */
export function materialClaims(passages: Passage[], listing: Listing, makers: MakerFile[]): ClaimDraft[] {
  const words = vocabularyOf(makers);
  const name = nameIn(listing);
  const drafts = passages.flatMap((from) => {
    const { text } = from.folded;
    const parts = partsIn(from);
    const names = endsOfName(from, name);
    const all = groups(from, words.find(from), words.materials).filter((group) => !isOfName(from, group, names));
    return all.flatMap((group): ClaimDraft[] => {
      const near = partsNear(parts, group);
      if (isBareSubject(text, group)) return [];
      const part = fittingsOf(partOf(text, group, near, from.language), group);
      const said = (start: number, end: number, confidence: number) =>
        saidIn(from, { start, end, words: from.text.slice(start, end) }, confidence);
      if (part) {
        const [start, end] = [Math.min(part.start, group.sourceStart), Math.max(part.end, group.sourceEnd)];
        return [
          {
            kind: 'material',
            part: part.value,
            material: materialOf(group, words.materials),
            ...said(start, end, 0.85),
          },
        ];
      }
      if (!group.hasMaterial) return [];
      if (isBareBrass(text, group, near))
        return [
          {
            kind: 'material',
            part: 'hardware',
            material: materialOf(group, words.materials),
            ...said(group.sourceStart, group.sourceEnd, 0.7),
          },
        ];
      if (!(from.field === 'title' ? isOfTitle(group, near) : isOfPiece(text, group, near, all)))
        return [notPlaced(from, 'material', [group.start, group.end])];
      return [
        {
          kind: 'material',
          part: 'body',
          material: materialOf(group, words.materials),
          ...said(group.sourceStart, group.sourceEnd, 0.7),
        },
      ];
    });
  });
  const data = listing.material[0];
  if (data && data.origin !== 'visible')
    drafts.push({
      kind: 'material',
      part: 'body',
      material: data.value.toLowerCase(),
      ...saidInData(data.value, data.confidence),
    });
  return drafts;
}
