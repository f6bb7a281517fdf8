import type { Listing } from '../listing/types';
import type { MakerFile } from '../maker/types';
import {
  anyOf,
  colourWords,
  type Hit,
  materialWords,
  phrasePattern,
  rightAhead,
  rightBehind,
  textPattern,
  wordsOf,
} from '../text';
import { isKindOfSubject, isLeatherAsSubject, isPredicateOfPiece, leavesBodyOpen } from './leather-as-subject';
import { groupsIn, materialOf, vocabularyOf } from './material-groups';
import { type Group, isBareBrass, isOfMetal, isOfPiece, isOfTitle } from './material-of-piece';
import { partOf, partsNear } from './material-part';
import { notPlaced } from './not-placed';
import { partsIn } from './parts';
import { type ClaimDraft, type Passage, saidIn, saidInData } from './passage';
import { isBeforeAccessory } from './subject';
import type { Part } from './types';

/** "Garnitures en laiton": trim of metal is the fittings. */
const fittingsOf = (part: Hit<Part> | null, group: Group): Hit<Part> | null =>
  part?.value === 'trim' && isOfMetal(group) ? { ...part, value: 'hardware' } : part;

/** The Dutch article for leather is another; "es de piel" is Spanish. */
const articles = anyOf(wordsOf('article').filter((word) => word !== 'de'));
const subject = textPattern(`(?:${phrasePattern(wordsOf('is')).source})\\s(?:${articles})\\s?$`);
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
function isOfName({ text }: Passage, { start, end, sourceStart }: Group, ends: ReadonlyMap<number, number>): boolean {
  const nameEnd = ends.get(start);
  return nameEnd !== undefined && end <= nameEnd && /^\p{Lu}/u.test(rightBehind(text, sourceStart));
}

/** "Cotton lining", as a maker's file may call it, is cotton where it is said of the lining; a turn lock stays one. */
function withoutPart(material: string, part: Hit<Part> | null): string {
  if (!part || !material.endsWith(` ${part.value}`)) return material;
  const alone = material.slice(0, -part.value.length - 1);
  const last = alone.split(' ').at(-1) as string;
  return last in materialWords || last in colourWords ? alone : material;
}

/** A group of a passage, the parts near it, and the one that it is said of. */
interface Said {
  group: Group;
  near: Hit<Part>[];
  part: Hit<Part> | null;
}
interface Read {
  from: Passage;
  all: Group[];
  said: Said[];
}

/** Whether a description of no part is that of the piece; `isOpen` where other words leave it open of what the piece is. */
function isOfBody(from: Passage, group: Group, near: Hit<Part>[], all: readonly Group[], isOpen: boolean): boolean {
  const { text } = from.folded;
  if (isOfPiece(text, group, near, all, from)) return true;
  if (isOpen) return false;
  return (
    isPredicateOfPiece(text, group) ||
    isLeatherAsSubject(text, group) ||
    isKindOfSubject(text, group, all[all.indexOf(group) - 1])
  );
}

/** Materials and colours per part. Without a part near, a material beside a word for the piece is the body's. */
export function materialClaims(passages: Passage[], listing: Listing, makers: MakerFile[]): ClaimDraft[] {
  const words = vocabularyOf(makers);
  const name = nameIn(listing);
  const read = passages.map((from): Read => {
    const parts = partsIn(from);
    const names = endsOfName(from, name);
    const all = groupsIn(from, words).filter((group) => !isOfName(from, group, names));
    const said = all.map((group): Said => {
      const near = partsNear(parts, group);
      return { group, near, part: fittingsOf(partOf(from.folded.text, group, near, from.language), group) };
    });
    return { from, all, said };
  });
  const isOpen = read.some(({ said }) => said.some(({ group, part }) => leavesBodyOpen(group, part !== null)));
  const drafts = read.flatMap(({ from, all, said }) => {
    const { text } = from.folded;
    return said.flatMap(({ group, near, part }, at): ClaimDraft[] => {
      if (isBareSubject(text, group)) return [];
      const material = withoutPart(materialOf(group, words.materials), part);
      const claimOf = (of: Part, start: number, end: number, confidence: number): ClaimDraft[] => {
        const words = saidIn(from, { start, end, words: from.text.slice(start, end) }, confidence);
        return [{ kind: 'material', part: of, material, ...words }];
      };
      if (part)
        return claimOf(part.value, Math.min(part.start, group.sourceStart), Math.max(part.end, group.sourceEnd), 0.85);
      if (isBareBrass(text, group, near)) return claimOf('hardware', group.sourceStart, group.sourceEnd, 0.7);
      if (!group.hasMaterial || isBeforeAccessory(text, group.end, from.title)) return [];
      // "Das Leder ist Kalb": of which leather it is, tells what stands behind.
      const next = all[at + 1];
      if (next && isKindOfSubject(text, next, group)) return [];
      if (!(from.field === 'title' ? isOfTitle(group, near) : isOfBody(from, group, near, all, isOpen)))
        return [notPlaced(from, 'material', [group.start, group.end])];
      return claimOf('body', group.sourceStart, group.sourceEnd, 0.7);
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
