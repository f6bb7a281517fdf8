import type { Condition } from '../listing/types';
import {
  aheadInClause,
  clauseAround,
  clauseBeforeComma,
  isAboutAnother,
  isNegated,
  isOnlySeeming,
  sentenceAround,
} from './clause';
import { foldWords, type Said } from './fold';
import { isOfFormerPart } from './former-part';
import { tableWords, topicFinder, topics, wordsOf } from './lexicon';
import { materialWords } from './material-words';
import { isNewOfElse } from './new-of-else';
import { type Hit, phraseFinder, phrasePattern, phraseTest } from './phrases';
import { Taken } from './taken';
import { accessoryWords, partWords } from './things';
import { isUsedBefore } from './used-before';

/** Gradings differ between sites; which grade a phrase is, is common practice, no source. */
const find = phraseFinder<Condition>(tableWords('condition'));
/** Bare words for "new": they count only where they are said of the piece. */
const findNew = topicFinder('new-bare');
/** Phrases in which a word of condition means something else: "used my discount", "porté épaule", "新品で購入". */
const findOther = topicFinder('no-condition');
const things = phrasePattern(
  [
    ...accessoryWords,
    ...wordsOf('corner'),
    ...Object.entries(partWords).flatMap(([part, words]) => (part === 'body' ? [] : words)),
  ],
  'u',
);
const thingsOfAny = phrasePattern([
  ...accessoryWords,
  ...wordsOf('comes-along'),
  ...Object.entries(partWords).flatMap(([part, words]) => (part === 'body' ? [] : words)),
]);
const nouns = phrasePattern(wordsOf('bag', 'piece', 'behind-new')).source;
const nounBefore = new RegExp(`(?:${nouns})\\s{1,2}$`, 'u');
const nounAfter = new RegExp(`^\\s{0,2}(?:${nouns})`, 'u');
const rightBefore = (words: string[]) => new RegExp(`(?:${phrasePattern(words).source})[\\s:.-]{0,3}$`, 'u');
const stateBefore = rightBefore(wordsOf('condition-before', 'is', 'wholly', 'and'));
const conditionBefore = rightBefore(wordsOf('condition-before'));
const boughtBefore = new RegExp(
  `(?:${phrasePattern(wordsOf('bought', 'cost-when')).source})\\s(?:(?:${phrasePattern(wordsOf('an')).source})\\s)?$`,
  'u',
);
const bought = phraseTest(wordsOf('bought', 'gifted'));
/** "The leather there is new": of what something is made of, and not of the piece. */
const material = phraseTest(Object.values(materialWords).flat());
const anyNoun = phraseTest(wordsOf('bag', 'piece', 'behind-new'));
/** "From my new handbag". */
const myBefore = rightBefore(wordsOf('possessive'));
const boughtBehind = new RegExp(`^\\s(?:${phrasePattern(wordsOf('bought')).source})`, 'u');
const andBehind = new RegExp(`^[\\s!]*$|^\\s(?:${phrasePattern(wordsOf('and')).source})\\s`, 'u');
const withBefore = new RegExp(`(?:${phrasePattern(wordsOf('with')).source})\\s`, 'u');

/** French words that are others without their accent: "porte", "use". */
const accentMatters = new Set(['use', 'porte', 'usage', 'usagee']);
const lacksAccent = ({ words }: Said<unknown>) => accentMatters.has(foldWords(words).text) && /^[a-z]+$/i.test(words);

/** "NOS" is new old stock; "nos" is "us" or "our", also where all is written in capitals. */
const inCapitalsOnly = new Set(['nos']);
const isPronoun = ({ words, start, end }: Said<unknown>, text: string): boolean =>
  inCapitalsOnly.has(words.toLowerCase()) &&
  (words !== words.toUpperCase() || !/\p{Ll}/u.test(text.slice(Math.max(0, start - 24), end + 24)));

/** What a denied condition leaves: "not new" is used; a denied flaw or "not worn" says nothing by itself. */
const denied: Record<Condition, Condition | null> = {
  new: 'used',
  unused: 'used',
  'as-new': 'used',
  'used-very-good': null,
  used: null,
  worn: null,
  damaged: null,
};

/** Whether "new" here is said of the piece: alone in its clause, after "condition", or before a word for the piece. */
function newOfPiece(text: string, start: number, end: number, opens: boolean): boolean {
  const clause = clauseAround(text, start, end);
  const before = text.slice(clause.start, start);
  const after = text.slice(end, clause.end);
  // "I bought a new bag", "neu gekauft": of another piece, or of another time.
  if (boughtBefore.test(before) || boughtBehind.test(after) || myBefore.test(before)) return false;
  // "Sie hat sie 1996 gekauft, neu.": how it was then.
  const told = before.trim() === '' && !opens ? clauseBeforeComma(text, clause.start) : null;
  if (told && bought.test(text.slice(told.start, told.end))) return false;
  if (material.test(before) && before.search(anyNoun) < 0) return false;
  if (nounAfter.test(after)) return true;
  if (andBehind.test(after) && (before.trim() === '' || nounBefore.test(before) || stateBefore.test(before)))
    return true;
  if (conditionBefore.test(before)) return true;
  return opens && before.trim() === '' && !things.test(after.slice(0, 24));
}

/** Whether the clause's subject, before the words, is a part or an accessory and not the piece. */
function isAboutThing(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  const before = text.slice(clause.start, start);
  if (isOfFormerPart(text, start, end)) return true;
  if (things.test(before)) return !withBefore.test(before);
  // "Unused dust bag": the words belong to the thing right behind them.
  const behind = things.exec(text.slice(end, clause.end));
  return behind !== null && /^\s{0,2}$/.test(text.slice(end, end + behind.index));
}

const fresh = phraseTest([...tableWords('condition').new, ...tableWords('condition').unused, ...wordsOf('new-bare')]);
/** "The dust bag is new, never used": a clause without a subject goes on with the new thing that the one before it is of. */
function goesOnOfThing(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  if (text.slice(clause.start, start).trim() !== '') return false;
  const before = clauseBeforeComma(text, clause.start);
  const words = before ? text.slice(before.start, before.end) : '';
  const [thing, isFreshAt] = [words.search(thingsOfAny), words.search(fresh)];
  // "New with tags, never worn" is the piece.
  return thing >= 0 && thing < isFreshAt;
}

const severalAre = rightBefore(
  Object.values(topics.is)
    .flatMap((words) => words[1] ?? [])
    .filter((word) => word !== 'も'),
);
/** "The boots are new", "they are unworn": of several things, and the piece is one. */
function isOfSeveral(text: string, start: number): boolean {
  const ahead = aheadInClause(text, start);
  return severalAre.test(ahead) && ahead.search(anyNoun) < 0;
}

const isFresh = (value: Condition): value is 'new' | 'unused' => value === 'new' || value === 'unused';

const codes = phrasePattern(wordsOf('code-noun'), 'u');
/** "The stamp is worn", "il timbro e consumato": said of the code alone. */
const isFlawOfCode = (text: string, start: number): boolean => codes.test(aheadInClause(text, start));

const back = phraseTest(wordsOf('sent-back'));
/** "Send it back within 30 days, unworn": how a piece has to be that goes back. */
function isOfReturn(text: string, start: number, end: number): boolean {
  const { start: opens, end: closes } = sentenceAround(text, start, end);
  return back.test(text.slice(opens, closes));
}

/**
 * Condition and grading words of a text in order, in the seven languages. "Never used" is unused, "not new" is used;
 * words said of parts, accessories or other pieces are left out. `opens` tells that the text is a title, where "New …"
 * at the start is said of the piece.
 */
export function findConditions(text: string, opens = false): Said<Condition>[] {
  const folded = foldWords(text);
  const found: Said<Condition>[] = [];
  const graded: Hit<Condition>[] = find(folded);
  const taken = new Taken(folded.text.length);
  for (const said of graded) taken.take(said.foldedStart, said.foldedEnd);
  const bare = new Set<Hit<Condition>>(
    findNew(folded).flatMap((said) =>
      taken.overlaps(said.foldedStart, said.foldedEnd) ? [] : [{ ...said, value: 'new' as const }],
    ),
  );
  const elsewhere = new Taken(folded.text.length);
  for (const said of findOther(folded)) elsewhere.take(said.foldedStart, said.foldedEnd);
  for (const said of [...graded, ...bare].sort((a, b) => a.start - b.start)) {
    const { foldedStart: start, foldedEnd: end } = said;
    if (lacksAccent(said) || isPronoun(said, text) || elsewhere.overlaps(start, end)) continue;
    const negated = isNegated(folded.text, start, end);
    if (bare.has(said) && !negated && !newOfPiece(folded.text, start, end, opens)) continue;
    if (isOfReturn(folded.text, start, end)) continue;
    if (isFresh(said.value) && isOfSeveral(folded.text, start)) continue;
    if (isFresh(said.value) && isNewOfElse(folded.text, [start, end], said.value, things)) continue;
    if ((said.value === 'worn' || said.value === 'damaged') && isFlawOfCode(folded.text, start)) continue;
    if (isFresh(said.value) && isOnlySeeming(folded.text, start, end)) continue;
    if (isFresh(said.value) && goesOnOfThing(folded.text, start, end)) continue;
    if (isAboutAnother(folded.text, start, end) || isAboutThing(folded.text, start, end)) continue;
    if (said.value === 'unused' && isUsedBefore(folded.text, start, end)) continue;
    const value = negated ? denied[said.value] : said.value;
    if (value) found.push({ value, start: said.start, end: said.end, words: said.words });
  }
  return found;
}
