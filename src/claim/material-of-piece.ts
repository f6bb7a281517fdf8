import {
  accessoryWords,
  clauseAround,
  type Hit,
  namesAnothersPiece,
  phrasePattern,
  phraseTest,
  sentenceAround,
  textPattern,
  wordsOf,
} from '../text';
import { bagNouns, namesBag } from './goods';
import type { Part } from './types';

/** Neighbouring words of colour and material, at their place of a folded text and of its source. */
export interface Group {
  words: string[];
  start: number;
  end: number;
  sourceStart: number;
  sourceEnd: number;
  /** Whether a material, and not only a colour, is named. */
  hasMaterial: boolean;
}

/** Materials that fittings and not bags are made of. */
const metals = new Set(['brass', 'bronze', 'nickel', 'palladium', 'steel', 'plastic', 'metal']);

export const isOfMetal = ({ words, hasMaterial }: Group): boolean =>
  hasMaterial && words.some((word) => metals.has(word));

const besideThings = phraseTest(accessoryWords);
const opensItem = textPattern(`^\\s?(?:(?:${phrasePattern(wordsOf('article', 'and', 'with')).source})\\s)?$`);
const mostBehind = 5;
/**
 * "Olive twill, brass, dark handles": brass that opens an item of its own is that of the fittings. Other metals mean more
 * than that: "nickel" is spotless in French.
 */
export function isBareBrass(text: string, { words, start, end }: Group, parts: readonly Hit<Part>[]): boolean {
  if (!words.includes('brass')) return false;
  const clause = clauseAround(text, start, end);
  if (parts.some((part) => part.foldedStart >= clause.start && part.foldedEnd <= clause.end)) return false;
  const behind = text.slice(end, clause.end);
  if ((behind.match(/[\p{L}\d]+/gu) ?? []).length > mostBehind) return false;
  return opensItem.test(text.slice(clause.start, start)) && !namesBag(behind) && !besideThings.test(behind);
}

/** What a title names as a material is the piece's, unless it is a part's. */
export const isOfTitle = (group: Group, parts: Hit<Part>[]) =>
  parts.length === 0 && !group.words.some((word) => metals.has(word));

/** "Borsa in pelle con fibbia": the material right behind what the piece is called. */
const rightBehindPiece = textPattern(
  `(?:${bagNouns.source})\\s(?:(?:${phrasePattern(wordsOf('made-of')).source})\\s)?$`,
);
/** A sentence tells its materials once: "bridle leather, canvas" leaves open what is of canvas. */
const barelySaidBefore = (text: string, group: Group, groups: readonly Group[]) =>
  groups.some(
    (one) =>
      one !== group &&
      one.end <= group.start &&
      one.hasMaterial &&
      !/[.!?;。\n]/.test(text.slice(one.end, group.start)),
  );

function namesLining(text: string, group: Group, parts: readonly Hit<Part>[]): boolean {
  const opens = sentenceAround(text, group.start, group.end).start;
  // A question and its answer are one sentence here.
  const from = text[opens - 1] === '?' ? sentenceAround(text, opens - 2, opens - 2).start : opens;
  const last = parts.filter((part) => part.foldedStart >= from && part.foldedEnd <= group.start).at(-1);
  return last?.value === 'lining' && !namesBag(text.slice(last.foldedEnd, group.start));
}

/** Cloths that bags are lined with: by themselves they are no body's. */
const linings = new Set(['twill', 'satin', 'microsuede', 'microfibre', 'sateen', 'drill']);
const isOfLinings = (words: string): boolean => words.split(' ').some((word) => linings.has(word));

/** A material beside a word for the piece, or alone in its clause, in a clause without any part. */
export function isOfPiece(text: string, group: Group, parts: Hit<Part>[], all: readonly Group[]): boolean {
  const clause = clauseAround(text, group.start, group.end);
  if (rightBehindPiece.test(text.slice(clause.start, group.start))) return true;
  if (parts.some((part) => part.foldedStart >= clause.start && part.foldedEnd <= clause.end)) return false;
  if (group.words.some((word) => metals.has(word) || isOfLinings(word))) return false;
  const rest =
    `${text.slice(clause.start, group.start)} ${text.slice(group.end, clause.end)}`.match(/[\p{L}\d]+/gu) ?? [];
  // "My sister's has pigskin, this one cotton": of the same part, whichever that is.
  if (namesAnothersPiece(text.slice(sentenceAround(text, group.start, group.end).start, group.start))) return false;
  // "Gevoerd? ja maar in 2013 opnieuw, zandkleurige microvezel": said of the lining that the sentence names, or of nothing.
  if (rest.length <= 1) return !barelySaidBefore(text, group, all) && !namesLining(text, group, parts);
  return namesBag(text.slice(Math.max(clause.start, group.start - 40), Math.min(clause.end, group.end + 40)));
}
