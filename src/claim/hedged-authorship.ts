import type { MakerFile } from '../maker/types';
import {
  accessoryWords,
  aheadInClause,
  anyLanguage,
  behindInClause,
  type Hit,
  isDenial,
  isLeftOpen,
  isNegated,
  jointWords,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  sourceRange,
  textPattern,
  topicFinder,
  wordsOf,
} from '../text';
import { nameFinder } from './by-makers';
import type { StatedMaker } from './maker';
import { partBeside } from './parts';
import { type ClaimDraft, type Passage, saidIn } from './passage';

/** Words that leave open who made the piece, wherever they stand. */
const find = topicFinder('inspired-by', 'other-hand');

/** A re-issue is no original of the older series, and says so: it is by the maker all the same. */
const reissue = phraseTest(wordsOf('re-issue'));

const before = textPattern(
  `(?:${phrasePattern(wordsOf('hedge-before-name')).source})[\\s:"']{1,3}(?:(?:${phrasePattern(wordsOf('an', 'article')).source})\\s)?$`,
);
/** What stands between a hedge and the name that it is of: "in the style of the Ondrasse" hedges once. */
const withArticle = textPattern(`^[\\s:"']{1,3}(?:${phrasePattern(wordsOf('an', 'article')).source})\\s$`);
const after = textPattern(`^[\\s"'-]{0,3}(?:${phrasePattern(wordsOf('hedge-behind-name')).source})`);

/** Whether a maker's name is hedged where it stands: "Ondrasse style", "inspired by Ondrasse", "Ondrasse風". */
export const isHedgedName = (text: string, start: number, end: number): boolean =>
  before.test(rightAhead(text, start)) || after.test(rightBehind(text, end));

/**
 * Everything that says or hints that another hand than the named maker's made the piece. What is likened to another
 * maker than the one stated ("like an Ondrasse", of a bag by Velmont) says nothing of who made it.
 */
export function hedgedAuthorshipClaims(
  passages: Passage[],
  makers: MakerFile[],
  stated: StatedMaker | null,
): ClaimDraft[] {
  const findNames = nameFinder(makers);
  return passages.flatMap((from) => {
    const { text } = from.folded;
    const found = findNames(from.folded);
    const others = stated ? found.filter(({ value }) => !stated.names.includes(value)) : [];
    const phrases = find(from.folded)
      .filter((hit) => !isDenied(text, hit.foldedStart, hit.foldedEnd, hit.words))
      .filter((hit) => !isLeftOpen(text, hit.foldedStart, hit.foldedEnd) && !isOfPart(text, hit))
      .filter((hit) => hit.value !== 'other-hand' || !reissue.test(`${from.title}\n${text}`))
      .filter((hit) => !isOfLook(from, hit, found))
      .filter((hit) => !comparison.test(hit.words.toLowerCase()) || !others.some((name) => isBehind(hit, name)));
    const names = found
      .filter((hit) => !others.includes(hit))
      .filter(
        ({ foldedStart: start, foldedEnd: end }) =>
          isHedgedName(text, start, end) && !isNegated(text, start, end) && !isLeftOpen(text, start, end),
      )
      .filter(
        (hit) =>
          !phrases.some(
            ({ foldedEnd }) =>
              Math.abs(foldedEnd - hit.foldedStart) <= 4 ||
              (foldedEnd < hit.foldedStart && withArticle.test(text.slice(foldedEnd, hit.foldedStart))),
          ),
      )
      .map((hit) => widened(from, hit));
    return [...phrases, ...names]
      .sort((a, b) => a.start - b.start)
      .map((hit): ClaimDraft => ({ kind: 'hedged-authorship', ...saidIn(from, hit, 0.85) }));
  });
}

/** "Not a replica" denies it; "not original" is the hedge itself. */
const isDenied = (text: string, start: number, end: number, words: string) =>
  !isDenial(words) && isNegated(text, start, end);

const accessories = phraseTest(accessoryWords);
const endsInOriginal = new RegExp(`(?:${anyLanguage(jointWords.original)})$`, 'iu');

/** "The zip is not original" tells of a part, "not the original box" of what comes along: neither of the maker. */
function isOfPart(text: string, { foldedStart, foldedEnd, words }: Hit<string>): boolean {
  if (!endsInOriginal.test(words)) return false;
  if (partBeside(text, foldedStart, foldedEnd) !== null) return true;
  return accessories.test(`${aheadInClause(text, foldedStart)}|${behindInClause(text, foldedEnd)}`);
}

const needsName = textPattern(`^(?:${anyLanguage(jointWords.needsName)})$`);
const comparison = textPattern(`(?:${anyLanguage(jointWords.comparedWith)})$`);
const lookNamed = /^\s(?:\d|\p{Ll})/u;

/**
 * "Inspired by the bags of doctors", "in the style of the 1970s": said of a look, not of a maker. A name is written
 * with a capital, or stands in a maker file; where neither follows, nobody's work is hedged.
 */
function isOfLook(from: Passage, hit: Hit<string>, names: readonly Hit<string>[]): boolean {
  const said = from.folded.text.slice(hit.foldedStart, hit.foldedEnd);
  const open = needsName.test(said);
  if (!open && !comparison.test(said)) return false;
  if (names.some((name) => isBehind(hit, name))) return false;
  // "De toute façon", "in stile con": said of a maker only where a name follows.
  if (open) return !/^\s\p{Lu}/u.test(rightBehind(from.text, hit.end));
  return lookNamed.test(rightBehind(from.text, hit.end));
}
/** How far behind "inspired by" a maker's name still belongs to it. */
const nearName = 40;
const isBehind = ({ end }: Hit<string>, { start }: Hit<string>) => start >= end && start - end <= nearName;

/** The name with the hedging word beside it. */
function widened({ folded, text }: Passage, hit: Hit<string>) {
  const left = before.exec(rightAhead(folded.text, hit.foldedStart));
  const right = after.exec(rightBehind(folded.text, hit.foldedEnd));
  const { start, end } = sourceRange(
    folded,
    left ? hit.foldedStart - left[0].length : hit.foldedStart,
    right ? hit.foldedEnd + right[0].length : hit.foldedEnd,
  );
  return { start, end, words: text.slice(start, end) };
}
