import type { MakerFile } from '../maker/types';
import type { Span } from '../span';
import {
  anyLanguage,
  behindInClause,
  clauseAround,
  clauseBeforeComma,
  type FoundDate,
  isAboutAnother,
  isSetAgainst,
  jointWords,
  lastEnd,
  phrasePattern,
  phraseTest,
  rightBehind,
  sentenceAround,
  textPattern,
  topics,
  wordsOf,
  wordsWithout,
} from '../text';
import { isAlsoOffered } from './also-offered';
import { isBehindCountry } from './country-and-year';
import { datesIn } from './dates-in';
import { invoiceIn } from './event-details';
import { isExplicitRange, isMadeWithin } from './explicit-range';
import { isOfCompanion, isOfGiver, namesBag } from './goods';
import { goesOnOfLook, isOnlyLook } from './look';
import { type PlacedDate, standingAlone, withoutLoose } from './loose-dates';
import {
  isBareJoint,
  isCoarse,
  isFromYear,
  isOfMaking,
  isReadOutOfCode,
  isVague,
  madeVerb,
  standsAlone,
} from './making';
import { notPlaced } from './not-placed';
import { isOfModelNotMine, isOfModelsRun, isOfReissue, isRunOfModel } from './of-model';
import { type ClaimDraft, foldedRange, type Passage, saidIn } from './passage';
import { isMadeThen } from './passive-making';
import { isDateOfThing, isOfPapersThing, isOfPerson, isOfShop } from './subject';
import { isHearsay, isSupposed, saysTold } from './supposed';
import { isUnsaid } from './unsaid';

const bought = phrasePattern(wordsOf('bought'));
/** "In 1990-1994 bought"; a shop behind years tells of a code. */
const boughtBehind = textPattern(
  `^\\s(?:\\p{L}{1,12}\\s)?(?:${phrasePattern(wordsWithout(wordsOf('bought'), 'shop', 'outlet', 'sample-sale')).source})`,
);
/** "Presa l'anno scorso": only of a time that is counted back. */
const gotThen = phraseTest(wordsOf('got-then'));
/** "From 1968, the year she bought it with her first wage". */
const boughtInThatYear = textPattern(
  `^[,、]?\\s?(?:${anyLanguage(jointWords.theYearThat)})(?:,?\\s[\\p{L}']{1,8}){0,5}?[\\sに](?:${bought.source})`,
);
const gifted = phrasePattern(wordsOf('gifted'));
/** A part was mended or exchanged: "in 2018 vervangen" is the year of a repair. */
const mended = phrasePattern(wordsOf('replaced', 'restored', 'repair-noun'));
/** "交換してもらいました", had it exchanged, ends as "もらいました" does, was given it. */
const withoutRepairs = (words: string): string => words.replace(mended, (found) => ' '.repeat(found.length));
const papers = phrasePattern(wordsOf('invoice', 'paper-or-key'));
/** "Added in 2015: the receipt is in the pocket": of what was added. */
const withoutPapers = (words: string): string => words.replace(papers, (found) => ' '.repeat(found.length));
/** "Facture d'une réparation de 1999": the year is the repair's, whatever stands before it. */
const repairOf = textPattern(
  `(?:${phrasePattern(wordsOf('repair-noun', 'other-work')).source})(?:\\s\\p{L}{1,4}){0,2}\\s?$`,
);
/** What happened to the piece besides, each a claim of its own. */
const otherEvents = ['re-dyed', 'dyed', 'appraised'] as const;
/** Dates beside these words are of something else: the house, the account, a repair or another event, the page. */
const elsewhere = phrasePattern(wordsOf('replaced', 'restored', 'date-of-else', 'repair-noun', ...otherEvents));
const sinceWords = phraseTest(wordsOf('since'));
/** "Je vends des sacs depuis 1998": what has gone on since then is no making. */
const isSince = ({ form }: FoundDate, words: string) => form !== 'range' && sinceWords.test(words);
/** "1952年創業": a Japanese word for what the date is of stands right behind it. */
const japaneseElsewhere = (['date-of-else', ...otherEvents] as const).flatMap((topic) => topics[topic].ja);
const elsewhereBehind = textPattern(`^に?(?:${phrasePattern(japaneseElsewhere).source})`);
/** Where a word of making or a bare "from" stands. */
const madeOrFrom = phrasePattern(wordsOf('made', 'of-year'));
const madeAhead = textPattern(`(?:${anyLanguage(jointWords.madeAhead)})[^,]{0,12}$`);
const age = phraseTest(wordsOf('age-behind'));
/** "My daughter is 12 years old", "my sister is 40" is no age of a bag. */
const people = phraseTest(wordsOf('people', 'others-kin'));

/** "When I turned 15, around 2004", "a present, christmas 2011". */
const opensAbout = textPattern(`^(?:${phrasePattern(wordsOf('about')).source}|${anyLanguage(jointWords.season)})?$`);

const onlyIn = textPattern(`^\\s?(?:${anyLanguage(jointWords.inPlace)})\\s?$`);

/** "Made in USA, 2002": a date that opens its clause is led by the clause before it. */
function leadStart(text: string, clauseStart: number, start: number): number {
  const opening = text.slice(clauseStart, start);
  // "Que mes collègues m'ont offert quand je suis partie, en 2008".
  if (!opensAbout.test(opening.trim()) && !onlyIn.test(opening)) return clauseStart;
  // "A present for my exam (2006)".
  const isInBracket = text[clauseStart - 1] === '(';
  const before = isInBracket
    ? clauseAround(text, clauseStart - 1, clauseStart - 1)
    : clauseBeforeComma(text, clauseStart);
  return before?.start ?? clauseStart;
}

/** "The matching bag, of 2004": a clause that holds nothing ahead of its date goes on with what the clause before it speaks of. */
function goesOnOfAnother(text: string, clauseStart: number, start: number): boolean {
  const before = isBareJoint(text.slice(clauseStart, start)) ? clauseBeforeComma(text, clauseStart) : null;
  return before !== null && isAboutAnother(text, before.end, before.end);
}

/** Further ahead of a date, and further behind it, nothing leads it. */
const [longestLead, longestTail] = [100, 80];
/** What befell a part is told no further behind the time of it. */
const nearBehindAgo = 48;

/** What the date is said of: the making, the purchase, something else (null), or nothing that could be told. */
function subjectOf(
  date: FoundDate,
  from: Passage,
  makers: MakerFile[],
): { kind: 'made' | 'bought' | 'not-placed'; confidence: number; alone?: true } | null {
  const { text } = from.folded;
  const [start, end] = foldedRange(from, date);
  // "Reißverschluss wurde letztes Jahr erneuert".
  if (date.form === 'ago' && text.slice(end, end + nearBehindAgo).search(mended) >= 0) return null;
  if (date.form === 'relative' || date.form === 'without-year' || isUnsaid(text, start, end)) return null;
  if (isOfCompanion(text, start, end) || isOfGiver(text, start, end) || isDateOfThing(text, start, end, from.title))
    return null;
  if (isOpenOrRange(date) && isRunOfModel(text, start)) return null;
  if (isOfModelsRun(text, start, end) || (isCoarse(date) && isOfReissue(text, start, end))) return null;
  if (isAlsoOffered(text, start)) return null;
  if (isOfModelNotMine(text, start, end) || isOfPapersThing(text, start, end, from.title)) return null;
  const since = isSince(date, text.slice(start, end));
  if (since && isOfShop(text, start, end)) return null;
  const clause = clauseAround(text, start, end);
  const before = text.slice(leadStart(text, clause.start, start), start).slice(-longestLead);
  const after = behindInClause(text, end).slice(0, longestTail);
  // A bare year behind all that a title names is of the offer.
  const isOfOffer = from.field === 'title' && text.slice(clause.start, start).trim() === '';
  if (!isOfOffer && goesOnOfAnother(text, clause.start, start)) return null;
  if (date.form === 'age' && people.test(before)) return null;
  if (isOfPerson(text, clause.start, start)) return null;
  // "Owned since 1994": the word that leads the date belongs to the one ahead of it.
  const led = withoutRepairs(before + text.slice(start, end));
  const words = {
    bought: lastEnd(bought, led),
    made: lastEnd(madeOrFrom, before),
    making: lastEnd(madeVerb, before),
    elsewhere: lastEnd(elsewhere, before),
  };
  if (boughtInThatYear.test(rightBehind(text, end))) return { kind: 'bought', confidence: 0.8 };
  if (isExplicitRange(date) && !isMadeWithin(date, before, after)) return null;
  // The nearest word before the date decides: "made in 1994, bought in 2010".
  if (words.bought && words.bought >= words.elsewhere && !madeAhead.test(before))
    return { kind: 'bought', confidence: 0.85 };
  if (lastEnd(mended, before) > Math.max(words.bought, words.making)) return null;
  if (isExplicitRange(date) && boughtBehind.test(after)) return { kind: 'bought', confidence: 0.8 };
  // "2002-2004 selon la boutique": what a shop tells of a code is no purchase.
  const makingLeads = words.making > 0 && joinsMaking.test(before.slice(words.making));
  if (
    !isExplicitRange(date) &&
    !makingLeads &&
    isBoughtThen(words.elsewhere > 0 ? withoutPapers(after) : after) &&
    lastEnd(madeOrFrom, before.slice(-12)) === 0
  )
    return { kind: 'bought', confidence: 0.8 };
  // "Last year" is said of what a seller did, and hardly of a making.
  if (date.form === 'ago')
    return words.elsewhere === 0 && gotThen.test(`${before} ${after}`) ? { kind: 'bought', confidence: 0.7 } : null;
  if (repairOf.test(before)) return null;
  if (happenedThen(after) && words.making === 0) return null;
  // "Founded in the 1990s"; further ahead it is told apart by what the decade is of.
  if (isCoarse(date) && words.elsewhere > 0 && nearBehind.test(before.slice(words.elsewhere))) return null;
  if (words.elsewhere > 0 && words.elsewhere >= words.made && !isCoarse(date)) return null;
  // "Se tiñeron de marrón en 2020": what happened stands before it, and nothing that names the piece or its making since.
  if (words.elsewhere > words.making && !namesBag(before.slice(words.elsewhere)) && !isCoarse(date)) return null;
  if (since || sinceWords.test(before.slice(-12)) || elsewhereBehind.test(after)) return null;
  if (age.test(after) || isOnlyLook(text, start, end) || (isCoarse(date) && goesOnOfLook(text, start))) return null;
  const doubtful = date.ambiguous ? 0.5 : 0.85;
  if (isOfMaking(before, after) || isMadeThen(from, [start, end])) return { kind: 'made', confidence: doubtful };
  if (isReadOutOfCode(from, start) || isBehindCountry(from, [start, end]))
    return { kind: 'made', confidence: doubtful };
  if (isFromYear(date, from, [start, end], makers)) return { kind: 'made', confidence: doubtful };
  if (from.field === 'title' && (date.form === 'year' || isVague(date))) return { kind: 'made', confidence: 0.7 };
  if (date.form !== 'year' && date.form !== 'range' && !isVague(date)) return null;
  return standsAlone(from, [start, end], makers)
    ? { kind: 'made', confidence: standingAlone, alone: true }
    : { kind: 'not-placed', confidence: 0.3 };
}

/** "Produced in the mid": no more than small words between a word of making and its date. */
const joinsMaking = /^\s?(?:\p{L}{1,4}\s){0,3}$/u;
const nearBehind = /^\s?(?:\p{L}{1,6}\s){0,2}$/u;

const isOpenOrRange = ({ form, span }: FoundDate) => form === 'range' || span.from === null || span.to === null;

/** "2005 bei einer Auktion gekauft"; in "of 1970, which he sold me in 1999" the purchase has a year of its own. */
function isBoughtThen(after: string): boolean {
  const end = lastEnd(bought, withoutRepairs(after));
  if (yearAfter.test(after)) return false;
  return end > 0 && !/^(?:\s\p{L}{1,6}){0,2}\s(?:1[89]|20)\d\d/u.test(after.slice(end));
}

/** "She closed it in 1994 and bought herself this bag the year after". */
const yearAfter = phraseTest(wordsOf('year-after'));

/** "2018 auf 400 Euro geschätzt": what happened in that year stands behind it. */
const happenedThen = (after: string) => {
  const end = lastEnd(elsewhere, after);
  return end > 0 && !/\d{4}/.test(after.slice(0, end));
};

/** "I think it is from 1994": the seller does not know it, so it is about that year. */
const asSaid = ({ span }: FoundDate, from: Passage, range: readonly [number, number]): Span =>
  isSupposed(from.folded.text, ...range) ? { ...span, about: true } : span;

/** "Owned since 1994": bought in that year, not at any time after it. */
const dayOfPurchase = (span: Span): Span =>
  span.from !== null && span.to === null ? { ...span, to: `${span.from.slice(0, 4)}-12-31` } : span;

/** "A present of 2005": given, where no other word for getting it stands in its clause. */
function howBought(from: Passage, [start, end]: readonly [number, number]): { how?: 'gifted' } {
  const { text } = from.folded;
  const clause = clauseAround(text, start, end);
  const words = text.slice(clause.start, clause.end);
  const others = words.replace(gifted, '');
  return others !== words && lastEnd(bought, others) === 0 ? { how: 'gifted' } : {};
}

/** "The shop told me 1988, the number says 1995": what somebody else said, and another date in the same sentence. */
function isSetRight(date: FoundDate, next: FoundDate | undefined, from: Passage): boolean {
  if (next === undefined) return false;
  const { text } = from.folded;
  const [start, end] = foldedRange(from, date);
  const clause = clauseAround(text, start, end);
  const behind = foldedRange(from, next)[0];
  return (
    behind >= clause.end &&
    behind < sentenceAround(text, start, end).end &&
    saysTold(text.slice(clause.start, clause.end))
  );
}

/** Claims of when the piece was made, and of when it was bought (which bounds the making from above only). */
export function dateClaims(passages: Passage[], readAt: string, makers: MakerFile[]): ClaimDraft[] {
  const dates = passages.flatMap((from) =>
    datesIn(from, readAt).flatMap((date, at, all): PlacedDate[] => {
      const placed = isSetRight(date, all[at + 1], from) ? null : placedDate(date, from, makers);
      return placed === null ? [] : [placed];
    }),
  );
  return withoutLoose(dates);
}

/** What a date is told of: a claim, or one of no known thing; null where it is of something else. */
function placedDate(date: FoundDate, from: Passage, makers: MakerFile[]): PlacedDate | null {
  const subject = subjectOf(date, from, makers);
  if (!subject) return null;
  const range = foldedRange(from, date);
  const said = saidIn(from, date, subject.confidence);
  const loose = () => notPlaced(from, 'date', range);
  const settled = (claim: ClaimDraft): PlacedDate => ({ claim, loose: null });
  if (subject.kind === 'not-placed') return settled(loose());
  const hearsay = isHearsay(from.folded.text, ...range);
  // "My mum always said 1983, but she said that of everything": the seller does not follow it.
  if (hearsay && isSetAgainst(from.folded.text, ...range)) return settled(loose());
  // "B1042173, 2002 to 2004 I was told": what a table tells of a code is told by somebody.
  const isHeard = hearsay && !isExplicitRange(date);
  if (subject.kind === 'made' && isHeard) return settled(loose());
  if (subject.kind === 'made')
    return {
      claim: { kind: subject.kind, span: asSaid(date, from, range), ...said },
      loose: subject.alone ? loose() : null,
    };
  const span = dayOfPurchase(isHeard ? { ...date.span, about: true } : date.span);
  return settled({ kind: subject.kind, span, ...howBought(from, range), ...invoiceIn(from, ...range), ...said });
}
