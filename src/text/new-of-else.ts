import { aheadInClause, aheadInSentence, clauseAround, isDenial, rightAhead, sentenceAround } from './clause';
import { anyLanguage } from './each-language';
import { foldedSet, foldWords } from './fold';
import { japanese } from './japanese';
import { almost, limitedTo, ofWhat, onlyThis, wantsOneJapanese, wasOnce, whoWants } from './joint-words';
import { tableWords, topics, wordsOf } from './lexicon';
import { phrasePattern, phraseTest } from './phrases';

/*
 * Words for new and unused that do not say how the whole piece is today: one owner did not use it, it was so once, it is
 * nearly so, only its strap is, somebody wants one that is, a new one costs so much. Common practice, no source.
 */

const byMe = phrasePattern(wordsOf('by-me')).source;
const byMeBehind = new RegExp(`^\\s(?:${byMe})`, 'u');
const byMeAhead = new RegExp(`(?:${byMe})\\s?$`, 'u');
/** "Never worn by me, daily by my mother": that one owner did not use it does not make it unused. */
const isOfOneOwner = (text: string, start: number, end: number): boolean =>
  byMeBehind.test(text.slice(end, end + 24)) || byMeAhead.test(rightAhead(text, start));

const since = phrasePattern(wordsOf('since')).source;
const sinceThen = new RegExp(`^\\s(?:${since})\\s(?:1[89]|20)\\d\\d(?!\\d)`, 'u');
const thenSince = new RegExp(`(?:${since})\\s(?:1[89]|20)\\d\\d\\s$|(?:1[89]|20)\\d\\d年(?:から|以降)$`, 'u');
/** "Unworn since 2001": until then it was not. */
const isSinceThen = (text: string, start: number, end: number): boolean =>
  sinceThen.test(text.slice(end, end + 24)) || thenSince.test(rightAhead(text, start));

const somewhere = new RegExp(`^\\s(?:${anyLanguage(limitedTo)})\\s`, 'u');
/** "Never used for work", "jamais servi au bureau": elsewhere it was. */
const isOfOneUse = (text: string, start: number, end: number): boolean =>
  isDenial(text.slice(start, end)) && somewhere.test(text.slice(end, end + 16));

const nearly = new RegExp(`(?:^|[^\\p{L}])(?:${anyLanguage(almost)})\\s?$`, 'u');
/** "Almost never used", "so gut wie nie benutzt", "quasi mai usata". */
const isNearlySo = (text: string, start: number): boolean => nearly.test(rightAhead(text, start));

const past = anyLanguage(wasOnce);
const wasAhead = new RegExp(`(?:^|[^\\p{L}])(?:${past})\\s(?:\\p{L}{1,12}\\s){0,2}$`, 'u');
const wasBehind = new RegExp(`^\\s(?:${past})\\s`, 'u');
/** "It was brand new when she got it", "neu war sie teuer"; "it was never used" still holds. */
const wasSo = (text: string, start: number, end: number): boolean =>
  !isDenial(text.slice(start, end)) &&
  (wasAhead.test(aheadInClause(text, start)) || wasBehind.test(text.slice(end, end + 12)));

const verb = `(?:${phrasePattern(wordsOf('is', 'feels')).source})`;
const article = phrasePattern(wordsOf('article', 'possessive')).source;
const only = anyLanguage(onlyThis);
const onlyBehind = new RegExp(
  `^\\s(?:${verb}\\s)?(?:${only})\\s(?:${verb}\\s)?(?:${article})\\s?|^品?(?:${onlyThis[6]})`,
  'u',
);
const onlyAhead = new RegExp(`^\\s?(?:${only})\\s(?:${article})\\s[\\p{L}-]{2,20}\\s(?:\\p{L}{1,12}\\s){0,2}$`, 'u');
const forThis = new RegExp(`^\\s(?:${anyLanguage(ofWhat)})\\s(?:${article})\\s?`, 'u');
/** "Unworn is only the strap", "just the keyring is unused", "état neuf pour la housse", "新品なのはベルトだけ": the rest is not. */
export const isOfOnePart = (text: string, start: number, end: number): boolean =>
  onlyBehind.test(text.slice(end, end + 40)) || onlyAhead.test(aheadInClause(text, start));
const isOfThingBehind = (text: string, end: number, things: RegExp): boolean => {
  const led = forThis.exec(text.slice(end, end + 32));
  return led !== null && text.slice(end + led[0].length, end + led[0].length + 32).search(things) === 0;
};

const whoever = new RegExp(`^\\s?(?:${anyLanguage(whoWants)})\\s`, 'u');
const wanted = new RegExp(`^[^。、]{0,10}?(?:${wantsOneJapanese})`, 'u');
const likened = new RegExp(`^(?:${phrasePattern(topics.likened.ja).source}|みたい|の(?:頃|ころ|時|とき))`, 'u');
/** "Wer Neuware will", "新品のような状態を求める方は", "新品の頃は": what somebody looks for, or what it is likened to. */
const isWantedOrLikened = (text: string, start: number, end: number): boolean =>
  whoever.test(aheadInSentence(text, start)) ||
  (japanese.test(text.slice(start, end)) &&
    (wanted.test(text.slice(end, end + 24)) || likened.test(text.slice(end, end + 8))));

const costs = phraseTest(wordsOf('costs-new'));
/** "Today's", "今の": so little may stand ahead of what is new. */
const fewWordsAhead = /^\s?(?:[\p{L}']{1,10}\s?){0,2}$/u;
/** "New it costs 890 today", "今の新品は20万円以上します": what a new one costs. */
function isOfNewPrice(text: string, start: number, end: number): boolean {
  const behind = text.slice(end, Math.min(sentenceAround(text, start, end).end, end + 60));
  const sum = behind.search(/\d/);
  const ahead = aheadInClause(text, start);
  return sum > 0 && costs.test(behind) && fewWordsAhead.test(ahead);
}

const grades = tableWords('condition');
const news = phrasePattern([...wordsOf('new-bare'), ...grades.new]).source;
/** A strap by which some bags are called as well: beside "new" it is the strap. */
const straps = foldedSet(tableWords('part').strap);
/** What is called so is the piece, or its condition: "brand new", "as new", "bag new". */
const ofPiece = phraseTest([
  ...wordsOf('bag', 'piece', 'condition-before', 'behind-new', 'this-one', 'wholly', 'likened'),
  ...wordsOf('kind-of-piece').filter((word) => !straps.has(foldWords(word).text)),
  ...wordsOf('is').filter((words) => !japanese.test(words)),
  ...grades['as-new'],
  ...grades.new.filter((words) => words.includes(' ')),
]);
const calledNew = new RegExp(
  `^\\s?(?:(?:${article})\\s?)?(?:[\\p{L}'-]{2,20}(?:\\s|は)(?:${news})|(?:${news})\\s[\\p{L}'-]{2,20})\\s?[,、]?$`,
  'u',
);
/**
 * Whether words for unused open a clause behind one that calls some thing new, and nothing else: "new strap, never worn",
 * "ストラップは新品、未使用" go on with the strap.
 */
function goesOnOfThing(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  if (text.slice(clause.start, start).trim() !== '' || !/[,、]/.test(text.charAt(clause.start - 1))) return false;
  const words = text.slice(clauseAround(text, clause.start - 1, clause.start - 1).start, clause.start);
  return calledNew.test(words) && !ofPiece.test(words);
}

/** Whether a word for new or unused says nothing of how the whole piece is today. */
export function isNewOfElse(
  text: string,
  [start, end]: readonly [number, number],
  value: 'new' | 'unused',
  things: RegExp,
): boolean {
  if (value === 'unused' && isNearlySo(text, start)) return true;
  if (
    wasSo(text, start, end) ||
    isOfOnePart(text, start, end) ||
    isOfThingBehind(text, end, things) ||
    isWantedOrLikened(text, start, end)
  )
    return true;
  if (value === 'new') return isOfNewPrice(text, start, end);
  if (goesOnOfThing(text, start, end)) return true;
  return isOfOneOwner(text, start, end) || isSinceThen(text, start, end) || isOfOneUse(text, start, end);
}
