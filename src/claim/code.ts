import type { MakerFile } from '../maker/types';
import {
  anyWithGaps,
  type Folded,
  findItemCodes,
  isAboutAnother,
  jointWords,
  phrasePattern,
  phraseTest,
  rightBehind,
  sentenceAround,
  sourceRange,
  textPattern,
  wordsOf,
  wordsWithout,
} from '../text';
import { asFarAsItFits, codesByLayout, fitsLayout } from './code-by-layout';
import { notPlaced } from './not-placed';
import { type ClaimDraft, type Passage, saidIn } from './passage';
import { type Quoted, quotedCodes } from './quoted-codes';
import { isSaidOfThing } from './subject';
import { isCorrected, withoutTakenBack } from './taken-back';

const edition = phraseTest(wordsOf('limited-edition'));
/** "The number says 1995", "gestempelt ist 1995": a year, where no layout explains it. */
const plainYear = /^(?:19[5-9]\d|20[0-4]\d)$/;
/** "Nº 087/200": a piece of so many. */
const ofSoMany = /^(\d{1,4})\s?\/\s?(\d{2,4})$/;
/** Two codes that begin closer than this are one. */
const leastApart = 12;

/** The folded text with the source's own case; both have the same length. */
function inOwnCase({ at, source, text }: Folded): string {
  // Full-width letters are capitals too.
  const own = (unit: string, index: number) =>
    /[a-z]/.test(unit) ? (source[at?.[index] ?? index] ?? unit).normalize('NFKC') : unit;
  return Array.from({ length: text.length }, (_, index) => own(text[index] as string, index)).join('');
}

/** "Edición limitada de 200 unidades, la mía es la nº 087/200". */
function isOfEdition(text: string, { start, code }: { start: number; code: string }): boolean {
  const [, one, of] = ofSoMany.exec(code) ?? [];
  if (of === undefined || Number(one) > Number(of)) return false;
  const { start: opens, end } = sentenceAround(text, start, start + code.length);
  return edition.test(text.slice(opens, end));
}

/** "Number 5512 is the cobbler's", "札の2231は靴修理店の番号": a number that somebody else gave the piece; a house may be its maker. */
const ofTrade = textPattern(
  `^[^.!?;,\\n]{0,32}?(?:${phrasePattern(wordsOf('is')).source})\\s?(?:\\p{L}{1,6}\\s){0,2}(?:\\p{L}{1,3}')?(?:${phraseTest(wordsWithout(wordsOf('shop'), 'own-house')).source})`,
);
const isOfTrade = (text: string, { start, code }: { start: number; code: string }): boolean =>
  ofTrade.test(rightBehind(text, start + code.length));

/** "Or" right behind a code; in Japanese no space has to follow. */
const orBehind = `^\\s?[?？]?\\s?(?:(?:${anyWithGaps(jointWords.either)})\\s|(?:${jointWords.either[6]})\\s?)`;
const or = textPattern(`${orBehind}$`);
/** "KV0915 or KV0975, the digit is worn": two of which one is the piece's. */
function areEither(
  text: string,
  one: { start: number; code: string },
  other: { start: number; code: string },
): boolean {
  const [first, last] = one.start < other.start ? [one, other] : [other, one];
  const gap = text.slice(first.start + first.code.length, last.start);
  return gap.length <= longestJoint && or.test(gap);
}
const longestJoint = 12;
const orOther = textPattern(`${orBehind}([a-z\\d]{3,14})(?![a-z\\d])`);
/** The same, where the other stands too near to be a code of its own: but for a character or two it is the first. */
function isOneOf(text: string, { start, code }: { start: number; code: string }): boolean {
  const end = start + code.length;
  const other = orOther.exec(rightBehind(text, end))?.[1];
  const own = text.slice(start, end);
  return other?.length === own.length && [...own].filter((unit, at) => unit !== other[at]).length <= mostOff;
}
const mostOff = 2;

/** Codes that the seller quotes, as written. */
export function codeClaims(passages: Passage[], makers: MakerFile[]): ClaimDraft[] {
  return passages.flatMap((from) => {
    const own = inOwnCase(from.folded);
    // "Code: T5 03291 W 28 H 17": where a layout explains the beginning, what follows is no more of it.
    const said = quotedCodes(from.folded, own).map((one) => ({
      ...one,
      code: asFarAsItFits(one.code, makers),
    }));
    const near = new Set(
      said.flatMap(({ start, code }) => {
        // One that is taken back has the right one right behind it.
        const behind = isCorrected(from.folded.text, start, start + code.length) ? code.length : leastApart;
        return Array.from({ length: leastApart - 1 + behind }, (_, at) => start - leastApart + 1 + at);
      }),
    );
    const shops = findItemCodes(from.text);
    const others = codesByLayout(from.folded.text, own, makers).flatMap(({ maker, ...found }): Quoted[] => {
      const at = from.folded.at?.[found.start] ?? found.start;
      const isOther = near.has(found.start) || shops.some((number) => number.start <= at && at < number.end);
      return isOther ? [] : [{ ...found, takenBy: { by: 'layout', words: maker } }];
    });
    const seen = new Set<number>();
    const inOrder = [...said, ...others].sort((a, b) => a.start - b.start);
    return withoutTakenBack(from.folded.text, inOrder)
      .filter((item) => !seen.has(item.start) && seen.add(item.start))
      .filter((item) => !isAboutAnother(from.folded.text, item.start, item.start + item.code.length))
      .filter((item) => !isOfEdition(from.folded.text, item) && !isOfTrade(from.folded.text, item))
      .filter(({ code }) => !plainYear.test(code) || fitsLayout(code, makers))
      .map((item, at, all): ClaimDraft => {
        const end = item.start + item.code.length;
        const { text } = from.folded;
        const beside =
          isOneOf(text, item) || [all[at - 1], all[at + 1]].some((other) => other && areEither(text, item, other));
        // "The box has a label with KV0915": whose code that is, is not plain.
        if (isSaidOfThing(from.folded.text, item.start, from.title)) return notPlaced(from, 'code', [item.start, end]);
        const said = saidIn(from, sourceRange(from.folded, item.start, end), item.confidence);
        return { kind: 'code', code: item.code, takenBy: item.takenBy, ...(beside ? { oneOf: true } : {}), ...said };
      });
  });
}
