import type { Span } from '../span';
import {
  clauseAround,
  type FoundDate,
  isAboutAnother,
  isLeftOpen,
  isNegated,
  parseDates,
  phrasePattern,
  sentenceAround,
  topics,
  wordsOf,
} from '../text';
import { isOfCompanion } from './goods';
import { isOnlyLook } from './look';
import { type ClaimDraft, foldedRange, lastEnd, type Passage, saidIn } from './passage';
import { isDateOfThing, isRunOfModel } from './subject';

const bought = phrasePattern(wordsOf('bought'));
/** A part was mended or exchanged: "in 2018 vervangen" is the year of a repair. */
const mended = phrasePattern(wordsOf('replaced', 'restored'));
/** Dates beside these words are of something else: the house, the account, a repair, the page. */
const elsewhere = phrasePattern(wordsOf('replaced', 'restored', 'date-of-else'));
const sinceWords = phrasePattern(wordsOf('since'), 'u');
/** "Je vends des sacs depuis 1998": what has gone on since then is no making. */
const isSince = (date: string) => sinceWords.test(date);
/** "1952年創業": a Japanese word for what the date is of stands right behind it. */
const elsewhereBehind = new RegExp(`^に?(?:${phrasePattern(topics['date-of-else'].ja, 'u').source})`, 'u');
const made = phrasePattern(wordsOf('made'));
const supposed = phrasePattern(wordsOf('supposed'), 'u');
const age = phrasePattern(wordsOf('age-behind'));
/** "My daughter is 12 years old" is no age of a bag. */
const people = phrasePattern(wordsOf('people'));

/** "Made in USA, 2002": a date that opens its clause is led by the clause before it. */
function leadStart(text: string, clauseStart: number, start: number): number {
  if (text.slice(clauseStart, start).trim() !== '' || !/,\s{1,2}$/.test(text.slice(clauseStart - 3, clauseStart + 1)))
    return clauseStart;
  return clauseAround(text, clauseStart - 2, clauseStart - 2).start;
}

/** What the date is said of: the making, the purchase, or neither (null). */
function subjectOf(date: FoundDate, from: Passage): { kind: 'made' | 'bought'; confidence: number } | null {
  const { text } = from.folded;
  const [start, end] = foldedRange(from, date);
  if (date.form === 'relative' || date.form === 'without-year' || isAboutAnother(text, start, end)) return null;
  if (isOfCompanion(text, start, end) || isDateOfThing(text, start, end, from.title)) return null;
  if (date.form === 'range' && isRunOfModel(text, start, end)) return null;
  const clause = clauseAround(text, start, end);
  const before = text.slice(Math.max(leadStart(text, clause.start, start), start - 60), start);
  const after = text.slice(end, Math.min(clause.end, end + 40));
  if (isLeftOpen(text, start, end)) return null;
  if (isNegated(text, start, end) || (date.form === 'age' && lastEnd(people, before))) return null;
  const words = { bought: lastEnd(bought, before), made: lastEnd(made, before), elsewhere: lastEnd(elsewhere, before) };
  // The nearest word before the date decides: "made in 1994, bought in 2010".
  if (
    words.bought &&
    words.bought >= words.elsewhere &&
    !/(?:made|hergestellt|fabriqu\w*|prodott\w*|fabricad\w*|gemaakt)[^,]{0,12}$/u.test(before)
  )
    return { kind: 'bought', confidence: 0.85 };
  if (lastEnd(bought, after) && !lastEnd(made, before.slice(-12))) return { kind: 'bought', confidence: 0.8 };
  if (lastEnd(mended, after) && !lastEnd(made, before.slice(-12))) return null;
  if (words.elsewhere && words.elsewhere >= words.made && !isCoarse(date)) return null;
  if (words.elsewhere && sinceWords.test(before.slice(-12))) return null;
  if (elsewhereBehind.test(after) || isSince(text.slice(start, end))) return null;
  if (lastEnd(age, after) || isOnlyLook(text, start, end)) return null;
  if (isCoarse(date) || date.span.about) return { kind: 'made', confidence: date.ambiguous ? 0.5 : 0.85 };
  if (words.made || /^\s?(?:年製|製|made|model(?!\s?\d)|production|hergestellt|製造)/u.test(after))
    return { kind: 'made', confidence: 0.85 };
  if (from.field === 'title' && date.form === 'year') return { kind: 'made', confidence: 0.7 };
  const sentence = sentenceAround(text, start, end);
  const alone =
    text.slice(sentence.start, start).trim() === '' && /^\s?(?:[\p{L}]|[,.]|$)/u.test(text.slice(end, sentence.end));
  return alone && (date.form === 'year' || date.form === 'range') ? { kind: 'made', confidence: 0.6 } : null;
}

const isCoarse = (date: FoundDate) =>
  date.form === 'age' ||
  date.form === 'decade' ||
  date.form === 'era' ||
  (date.form === 'range' && date.span.precision === 'range');

/** "I think it is from 1994": the seller does not know it, so it is about that year. */
function asSaid({ span }: FoundDate, from: Passage, [start, end]: readonly [number, number]): Span {
  const { text } = from.folded;
  const sentence = sentenceAround(text, start, end);
  return supposed.test(text.slice(sentence.start, sentence.end)) ? { ...span, about: true } : span;
}

/** "Owned since 1994": bought in that year, not at any time after it. */
const dayOfPurchase = (span: Span): Span =>
  span.from !== null && span.to === null ? { ...span, to: `${span.from.slice(0, 4)}-12-31` } : span;

/** Claims of when the piece was made, and of when it was bought (which bounds the making from above only). */
export function dateClaims(passages: Passage[], readAt: string): ClaimDraft[] {
  return passages.flatMap((from) =>
    parseDates(from.text, { language: from.language, now: readAt }).flatMap((date): ClaimDraft[] => {
      const subject = subjectOf(date, from);
      if (!subject) return [];
      return [
        {
          kind: subject.kind,
          span: subject.kind === 'bought' ? dayOfPurchase(date.span) : asSaid(date, from, foldedRange(from, date)),
          ...saidIn(from, date, subject.confidence),
        },
      ];
    }),
  );
}
