import {
  aheadInClause,
  anyLanguage,
  behindInClause,
  jointWords,
  materialWords,
  partWords,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  textPattern,
  topics,
  wordsOf,
} from '../text';
import { type Group, isOfMetal } from './material-of-piece';

/*
 * "The leather is a bit dry", "das Leder ist Rindbox", "la piel está reseca": a sentence with the leather for its subject
 * tells that the piece is of leather, where the seller names no other material for it. Common practice, no source.
 */

const isLeather = (word: string): boolean =>
  word !== 'imitation leather' && /(?:^|\s)leather$|skin$|^(?:suede|nubuck)$/.test(word);
const leathers = Object.entries(materialWords).flatMap(([name, words]) => (isLeather(name) ? words : []));
const article = `(?:(?:${phrasePattern(wordsOf('article')).source})\\s?)?`;
const feels = phrasePattern(wordsOf('feels')).source;

const opensClause = textPattern(`^\\s?(?:(?:${phrasePattern(wordsOf('and')).source})\\s)?${article}$`);
const judged = textPattern(`^(?:\\s(?:${feels})\\s|(?:は|が|も))`);
const partNamed = phraseTest(Object.values(partWords).flat());

/** Whether a clause has a group of leather for its subject, goes on with how it is, and names no part that it could be of. */
export function isLeatherAsSubject(text: string, { words, start, end }: Group): boolean {
  if (!words.some(isLeather) || !judged.test(rightBehind(text, end))) return false;
  return opensClause.test(aheadInClause(text, start)) && !partNamed.test(behindInClause(text, end));
}

const isJoint = textPattern(
  `^(?:\\s(?:${phrasePattern(wordsOf('is')).source})\\s(?:(?:${phrasePattern(wordsOf('made-of', 'an')).source}|d[eu])\\s${article})?|は)$`,
);
/** "Das Leder ist Rindbox": the group that tells of which leather the one ahead of it is. */
export const isKindOfSubject = (text: string, group: Group, before: Group | undefined): boolean =>
  before !== undefined && isLeatherAsSubject(text, before) && isJoint.test(text.slice(before.end, group.start));

/** In the singular: what "they" are may be anything. */
const isOne = phrasePattern([...Object.values(topics.is).flatMap(([first]) => first ?? []), "it's"]).source;
const pieceIs = textPattern(
  `^\\s?(?:(?:${anyLanguage(jointWords.itself)})\\s)?(?:${isOne}|c'est)\\s(?:(?:${phrasePattern(wordsOf('made-of', 'an')).source}|d[eu]|en)\\s)?$`,
);
const things = phraseTest([...Object.values(partWords).flat(), ...wordsOf('small-thing', 'comes-along')]);
/** "It is leather", "c'est du cuir": the piece, where the sentence before names nothing else that "it" could be. */
export const isPredicateOfPiece = (text: string, group: Group): boolean =>
  group.words.some(isLeather) &&
  pieceIs.test(aheadInClause(text, group.start)) &&
  behindInClause(text, group.end).trim() === '' &&
  !things.test(rightAhead(text, group.start));

/** Whether a material leaves open of what the piece is: leather of a part, or another material of no part. */
export const leavesBodyOpen = (group: Group, hasPart: boolean): boolean =>
  group.hasMaterial && (hasPart ? group.words.some(isLeather) : !group.words.some(isLeather) && !isOfMetal(group));

const driesUp = Object.entries(partWords).flatMap(([part, words]) =>
  /^(?:handle|strap|trim|tab|base)$/.test(part) ? words : [],
);
const driedBehind = textPattern(
  `(?:${phrasePattern([...leathers, ...driesUp]).source})(?:\\s(?:${feels})\\s(?:(?:${phrasePattern(wordsOf('degree')).source})\\s){0,2}|(?:は|が|も)(?:${phrasePattern(wordsOf('degree')).source})?)$`,
);
/** "The leather is a bit dry", "handles feel dry"; "store it in a dry place" is said of no leather. */
export const isDriedLeather = (text: string, start: number): boolean => driedBehind.test(rightAhead(text, start));
