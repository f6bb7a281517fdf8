import type { MakerFile } from '../maker/types';
import {
  aheadInClause,
  anyLanguage,
  anyOf,
  clauseAround,
  type FoundDate,
  foldedSet,
  japanese,
  jointWords,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  sentenceAround,
  sourceRange,
  tableWords,
  textPattern,
  topics,
  wordsOf,
  wordsWithout,
} from '../text';
import { rememberForMakers } from './by-makers';
import { bagNouns } from './goods';
import type { Passage } from './passage';
import { speaksOfThing } from './subject';

/*
 * What makes a date the piece's own: a word of making in its clause, or a bare "from" right before it in a clause that
 * speaks of the piece. A bare "from" anywhere else says nothing. Common practice, no source.
 */

const made = phraseTest(wordsOf('made'));
export const madeVerb = phrasePattern(wordsOf('made-verb'));
/** Whether words tell of making. */
export const tellsMaking = phraseTest(wordsOf('made-verb'));
const madeBehind = textPattern(`^\\s?(?:${anyLanguage(jointWords.madeBehind)})`);

/** "Of 1994", "uit het jaar 1994": right before the date. */
const ofYear = textPattern(
  `(?:^|[\\s('"-])(?:${phrasePattern(wordsOf('of-year', 'it-follows')).source})[\\s:.]{0,2}(?:(?:the|years?|des|annees?|den|les|los|gli|le|la|il|el|lo|het|de|das|dem)\\s)?(?:(?:\\p{L}{2,12}|[1-4](?:\\.|st|nd|rd|th|er|eme|e|°|o)?)\\s(?:${anyOf(tableWords('year-part').quarter)})\\s(?:(?:of|de|del|von|van)\\s)?)?['-]?$`,
);
const piece = phraseTest(
  wordsWithout(
    wordsOf('bag', 'piece', 'kind-of-piece', 'this-one', 'mine', 'vintage', 'antique', 'hearsay', 'it-follows'),
    'small-thing',
    'possessive',
  ),
);
const smallThings = new Set(wordsOf('small-thing'));
/** A belt or a purse is the piece where the title calls it so. */
const smallPiece = phraseTest(wordsOf('bag').filter((words) => smallThings.has(words)));
const namesSmallPiece = (words: string, title: string): boolean => {
  const found = smallPiece.exec(words);
  return found !== null && title.includes(found[0]);
};
/** What makers and models are called. */
const namesOf = rememberForMakers((makers) => {
  const names = makers.flatMap(({ maker, aliases, models }) => [
    maker,
    ...aliases,
    ...models.flatMap(({ name, aliases: more }) => [name, ...(more ?? []), name.replace(/ ?\d{1,4}$/, '')]),
  ]);
  return phraseTest(names);
});
/** "It is from 1994", "c'est un sac de", "stammt aus", "risale al". */
const is = textPattern(`(?:${phrasePattern(wordsOf('is', 'dates-from', 'made')).source})[^\\p{L}]*$`);
/** "My daughter is from 1994", "my trip was from 2004 on": nobody's thing that is not the piece was made then. */
const people = phraseTest(wordsOf('people', 'possessive'));
/** "Mine is from 2001", "meine ist von 2001", "私のは2001年のもの": the possessive stands for the piece, and no noun behind it. */
const mineIs = textPattern(
  `(?:^|[^\\p{L}])(?:${phrasePattern(wordsOf('mine')).source}|${anyLanguage(jointWords.ownOne)})\\s(?:${phrasePattern(wordsOf('is', 'dates-from')).source})[^\\p{L}]*$`,
);
const japaneseMine = textPattern(`(?:${phrasePattern(topics.mine.ja).source})は?$`);
/** "Het bonnetje erin is": some noun, and no word for the piece. "Das ist", "die stammt", "I think" have none. */
const opensWithNoun = textPattern(
  `^(?:${phrasePattern(wordsOf('article', 'an').filter((word) => word !== 'i')).source})\\s?(?!(?:${phrasePattern(wordsOf('is', 'dates-from', 'made')).source})(?!\\p{L}))([\\p{L}'-]{3,})\\s`,
);
const callsPiece = phraseTest([...wordsOf('bag'), ...tableWords('part').body]);
function opensWithOtherNoun(opening: string, title: string): boolean {
  const noun = opensWithNoun.exec(opening)?.[1];
  return noun !== undefined && !title.includes(noun) && !callsPiece.test(noun);
}
const pieceNear = textPattern(`^\\s?(?:\\p{L}{1,15}\\s){0,3}?(?:${piece.source})`);
/** "A 1970s Ondrasse", "I think 1994". */
const bareArticle = textPattern(
  `^(?:(?:\\p{L}{1,6}\\s|c')?(?:${phrasePattern(wordsOf('is')).source})\\s)?(?:${phrasePattern(wordsOf('an', 'article', 'supposed')).source})?$`,
);
/** "Circa 1993 as far as I know". */
const supposedBehind = textPattern(`^\\s(?:${phrasePattern(wordsOf('supposed')).source})`);
/** The date by itself: what follows closes its clause, or names the piece behind a Japanese particle. */
const closes = /^\s{0,2}(?:[-–—](?!\s?\d)|[,.;!)\]|/·•&+、。]|:(?!\s?\p{L})|年?$)/u;
/** "2001年のもの"; "2001年の結婚式" is of a wedding. */
const ofJapanesePiece = textPattern(`^年?の(?:お?品|[^\\s、。]{0,8}?(?:${piece.source}))`);

const codeAhead =
  /(?:^|[\s,("])(?=[^:=]{0,16}\d\d)(?=[^:=]{0,16}[A-Z])[A-Z\d()./-]{2,14}(?: [A-Z\d]{1,5})?["')]?\s?[:=]\s?(?:\p{L}{1,6}\s)?$/u;
/** "8812 YD: December 1988": what the seller reads out of a code that stands right ahead. */
export const isReadOutOfCode = ({ folded }: Passage, start: number): boolean =>
  codeAhead.test(sourceRange(folded, Math.max(0, start - longestCode), start).words);
/** With what leads from it to its date. */
const longestCode = 32;

const joints = textPattern(`^\\s?(?:(?:${phrasePattern(wordsOf('of-year', 'made-verb')).source})\\s?){0,2}(?:in\\s)?$`);
/** Whether nothing but a word that leads to a date stands ahead of it: "of", "made in". */
export const isBareJoint = (ahead: string): boolean => joints.test(ahead);

/** Whether a word of making stands in the clause ahead of a date, or right behind it. */
export const isOfMaking = (before: string, after: string): boolean =>
  made.test(before) || tellsMaking.test(after.slice(0, 24)) || madeBehind.test(after);

/** Further ahead of "from" the piece is not what it is said of. */
const longestWay = 48;

/** Whether the words of a passage ahead of a date, up to a bare "from", speak of the piece. */
function speaksOfPiece(opening: string, from: Passage, makers: MakerFile[]): boolean {
  const near = opening.slice(-longestWay);
  if (piece.test(near) || namesSmallPiece(near, from.title)) return true;
  return namesOf(makers).test(near) || endsInTitle(opening, from.title);
}

/** "Bucket 26 of 2004": behind what the title calls the piece, or the last word of it. */
function endsInTitle(opening: string, title: string): boolean {
  const word = opening.trim().match(/[\p{L}\p{N}&'-]{1,24}$/u)?.[0] ?? '';
  if (word.length < fewestOfName || joins.has(word)) return false;
  // Japanese words stand without gaps.
  return japanese.test(word) ? title.includes(word) : title.split(wordGap).includes(word);
}
/** Shorter words stand in any title, and so do those that only join. */
const fewestOfName = 2;
const joins = foldedSet([...wordsOf('of-year', 'with', 'article', 'an', 'and', 'is', 'it-follows'), 'in', 'en', 'im']);
const wordGap = /[^\p{L}\p{N}&'-]+/u;

/** "From 1994", "a bag of the 90s", "30 years old": the date behind a bare "from", said of the piece. */
export function isFromYear(
  date: FoundDate,
  from: Passage,
  [start, end]: readonly [number, number],
  makers: MakerFile[],
): boolean {
  if (date.form === 'age') return true;
  const { text } = from.folded;
  const clause = clauseAround(text, start, end);
  const ahead = text.slice(clause.start, start);
  const joint = ofYear.exec(ahead);
  // What the date itself holds may be the joint: "from the 90s", "circa 1994".
  const opening = (joint ? ahead.slice(0, joint.index) : ahead).trim();
  if (japaneseMine.test(opening) && ofJapanesePiece.test(rightBehind(text, end))) return true;
  if (!joint && !isVague(date)) return false;
  if (mineIs.test(opening)) return true;
  if (speaksOfPiece(opening, from, makers)) return true;
  if (is.test(opening) && !people.test(opening) && !opensWithOtherNoun(opening, from.title))
    return !speaksOfThing(text, start, from.title);
  const after = text.slice(end, clause.end);
  return bareArticle.test(opening) && (opensName(after, makers) || (isVague(date) && supposedBehind.test(after)));
}

/** "1994.", "1994 bridle leather bag", "1994 Ondrasse": the words behind a date that opens its clause leave it to the piece. */
const opensName = (after: string, makers: MakerFile[]): boolean =>
  closes.test(after) ||
  after.trim() === '' ||
  ofJapanesePiece.test(after) ||
  pieceNear.test(after) ||
  namesOf(makers).exec(after)?.index === 1;

/** As coarse as it is said, or "about". */
export const isVague = (date: FoundDate): boolean => isCoarse(date) || date.span.about === true;
export const isCoarse = (date: FoundDate): boolean =>
  date.form === 'age' ||
  date.form === 'decade' ||
  date.form === 'era' ||
  (date.form === 'range' && date.span.precision === 'range');

/** "Est. 1962": the stop is an abbreviation's, and the year the house's. */
const abbreviated = textPattern(`(?<!\\p{L})(?:${anyLanguage(jointWords.foundedShort)})\\.\\s?$`);
const longestName = 32;
const endsInName = textPattern(`(?:${bagNouns.source})$`);

/** "The stamp says M3-214/98, so it is a 1998": what the seller makes of it, behind a comma. */
const itFollows = textPattern(
  `^\\s?(?:${phrasePattern(wordsOf('it-follows')).source})\\s(?:(?:\\p{L}{1,6}\\s|c')?(?:${phrasePattern(wordsOf('is')).source})\\s)?(?:${phrasePattern(wordsOf('an')).source})\\s?$`,
);

/** "1994.", "Cartable 1991, …": the year by itself, right behind what the piece is called or before it. */
export function standsAlone(from: Passage, [start, end]: readonly [number, number], makers: MakerFile[]): boolean {
  const { text } = from.folded;
  const sentence = sentenceAround(text, start, end);
  const opening = text.slice(sentence.start, start).trim();
  const after = text.slice(end, sentence.end);
  if (abbreviated.test(rightAhead(text, sentence.start))) return false;
  if (bareArticle.test(opening)) return opensName(after, makers);
  if (itFollows.test(aheadInClause(text, start))) return closes.test(after) || after.trim() === '';
  return (
    opening.length <= longestName &&
    (endsInName.test(opening) || endsInTitle(opening, from.title)) &&
    /^\s?(?:[\p{L}]|[,.]|$)/u.test(after)
  );
}
