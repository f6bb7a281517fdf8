import {
  accessoryWords,
  aheadInSentence,
  anyLanguage,
  clauseAround,
  foldedSet,
  type Hit,
  jointWords,
  namesAnothersPiece,
  phrasePattern,
  phraseTest,
  rightBehind,
  textPattern,
  wordsOf,
  wordsWithout,
} from '../text';
import { bagNouns, namesBag } from './goods';
import type { Passage } from './passage';
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
const opensItem = textPattern(
  `^\\s?(?:(?:${phrasePattern(wordsOf('article', 'and', 'with')).source})\\s)?(?:(?:${anyLanguage(jointWords.allOfIt)})\\s)?$`,
);
const tones = new Set(['brass', 'gold-tone', 'silver-tone']);
const mostBehind = 5;
/**
 * "Olive twill, brass, dark handles", "all brass", "métal argenté": brass that opens an item of its own is that of the
 * fittings. Other metals mean more than that: "nickel" is spotless in French.
 */
export function isBareBrass(text: string, { words, start, end }: Group, parts: readonly Hit<Part>[]): boolean {
  const isOfFittings = words.some((word) => tones.has(word)) || (words.includes('metal') && words.length > 1);
  if (!isOfFittings) return false;
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
const behindName = textPattern(
  `([\\p{L}\\p{N}&'-]{2,24})\\s(?:${phrasePattern(wordsOf('made-of')).source})\\s(?:\\p{L}{1,12}\\s){0,2}$`,
);
/** "En cuir", "en piel"; Dutch "en" is "and". */
const behindNameEn = textPattern(`([\\p{L}\\p{N}&'-]{2,24})\\sen\\s(?:\\p{L}{1,12}\\s){0,2}$`);
/** "Carryall 30 in coated canvas": behind the last word of what the title calls the piece. */
const isBehindTitle = (ahead: string, title: string, language: string | null): boolean => {
  const last = (behindName.exec(ahead) ?? (/^(?:fr|es)/.test(language ?? '') ? behindNameEn.exec(ahead) : null))?.[1];
  return last !== undefined && title.includes(last);
};

const opensText = textPattern(
  `^\\s?(?:(?:${phrasePattern(wordsOf('article', 'an', 'made-of')).source})\\s?)?(?:[\\p{L}-]{1,12}[\\s-])?$`,
);
const withBehind = textPattern(`^\\s(?:${phrasePattern(wordsOf('with')).source}|on)\\s`);
/** "Brown bridle hide with brass fittings": what opens its sentence, and comes with parts of other materials. */
function opensWithParts(text: string, { start, end }: Group): boolean {
  if (!withBehind.test(rightBehind(text, end))) return false;
  if (opensText.test(aheadInSentence(text, start))) return true;
  // "A doctor's bag, about 1945, in black cowhide with a nickel lock": a clause that opens with "of" goes on of the piece.
  const clause = clauseAround(text, start, end);
  return ofMaterial.test(text.slice(clause.start, start)) && namesBag(aheadInSentence(text, clause.start));
}
const ofMaterial = textPattern(`^\\s?(?:${phrasePattern(wordsOf('made-of')).source}|en)\\s(?:\\p{L}{1,12}\\s)?$`);

const opensOfMaterial = textPattern(`^\\s?(?:${phrasePattern(wordsOf('made-of')).source})\\s`);

/** Words of texture, without those that join: "grained" leaves what is of leather as it is, "lid of" does not. */
const tellsTexture = foldedSet(
  wordsWithout(
    wordsOf('joint-in-material', 'beside-material'),
    'and',
    'made-of',
    'link-to-material',
    'article',
    'an',
    'with',
    'other-one',
  ),
);

/** A sentence tells its materials once: "bridle leather, canvas" leaves open what is of canvas. */
const barelySaidBefore = (text: string, group: Group, groups: readonly Group[]) =>
  groups.some(
    (one) => one.end <= group.start && one.hasMaterial && !/[.!?;。\n]/.test(text.slice(one.end, group.start)),
  );

function namesLining(text: string, group: Group, parts: readonly Hit<Part>[]): boolean {
  const opens = group.start - aheadInSentence(text, group.start).length;
  // A question and its answer are one sentence here.
  const asked = opens - 1;
  const from = text[asked] === '?' ? asked - aheadInSentence(text, asked).length : opens;
  const last = parts.filter((part) => part.foldedStart >= from && part.foldedEnd <= group.start).at(-1);
  return last?.value === 'lining' && !namesBag(text.slice(last.foldedEnd, group.start));
}

/** Cloths that bags are lined with: by themselves they are no body's. */
const linings = new Set(['twill', 'satin', 'microsuede', 'microfibre', 'sateen', 'drill']);
const isOfLinings = (words: string): boolean => words.split(' ').some((word) => linings.has(word));

/** A material beside a word for the piece, or alone in its clause, in a clause without any part. */
export function isOfPiece(
  text: string,
  group: Group,
  parts: Hit<Part>[],
  all: readonly Group[],
  { title, language }: Pick<Passage, 'title' | 'language'>,
): boolean {
  const clause = clauseAround(text, group.start, group.end);
  const [ahead, behind] = [text.slice(clause.start, group.start), text.slice(group.end, clause.end)];
  const isOther = group.words.some((word) => metals.has(word) || isOfLinings(word));
  if (rightBehindPiece.test(ahead) || (!isOther && isBehindTitle(ahead, title, language))) return true;
  if (!isOther && opensWithParts(text, group)) return true;
  if (parts.some((part) => part.foldedStart >= clause.start && part.foldedEnd <= clause.end)) return false;
  if (isOther) return false;
  // "…, in conker brown leather, …": what opens the clause joins it to the piece.
  const own = ahead.replace(opensOfMaterial, ' ');
  const rest = (`${own} ${behind}`.match(/[\p{L}\d]+/gu) ?? []).filter((word) => !tellsTexture.has(word));
  // "My sister's has pigskin, this one cotton": of the same part, whichever that is.
  if (namesAnothersPiece(aheadInSentence(text, group.start))) return false;
  // "Gevoerd? ja maar in 2013 opnieuw, zandkleurige microvezel": said of the lining that the sentence names, or of nothing.
  if (rest.length <= 1) return !barelySaidBefore(text, group, all) && !namesLining(text, group, parts);
  return namesBag(ahead.slice(-nearPiece)) || namesBag(behind.slice(0, nearPiece));
}
/** Further away in its clause the piece is not what a material is named for. */
const nearPiece = 40;
