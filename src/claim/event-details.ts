import {
  aheadInSentence,
  clauseAround,
  type FoundDate,
  isLeftOpen,
  isNegated,
  phraseFinder,
  phrasePattern,
  phraseTest,
  sentenceAround,
  tableWords,
  wordsOf,
  wordsWithout,
} from '../text';
import { datesIn } from './dates-in';
import { foldedRange, type Passage } from './passage';
import type { EventDetails } from './types';

/*
 * When something was done to the piece, by whom, and whether there is a paper of it: what stands in the same sentence,
 * and beside no other verb of making, buying or mending. Common practice, no source.
 */

const ofElse = phraseTest(wordsOf('bought', 'made-verb'));
const ofOther = phraseTest(wordsOf('bought', 'made-verb', 'replaced', 'restored', 're-dyed', 'dyed', 'appraised'));
/** Whether words name what else was done: a purchase, a making, a repair of its own. */
const namesOther = (words: string): boolean => ofOther.test(words);
/** What else was done beside a purchase; beside a repair, a purchase is too. A shop or a receipt by itself is nothing done. */
const besidePurchase = phrasePattern(
  wordsOf('replaced', 'restored', 're-dyed', 'dyed', 'appraised', 'new-before-part', 'new-behind-part', 'made-verb'),
);
const purchases = phrasePattern(
  wordsWithout(wordsOf('bought'), 'shop', 'outlet', 'sample-sale', 'invoice', 'paper-or-key', 'market-place'),
);
/** "By a cobbler, and I put a new pull on": somebody else does what follows. */
const myself = phraseTest(wordsOf('first-person'));
const joint = phrasePattern(wordsOf('and'));
const doers = phrasePattern([...Object.values(tableWords('by-whom')).flat(), ...wordsOf('invoice')]);
const papers = phrasePattern(wordsOf('invoice'));
/** "Receipt lost". */
const lost = phraseTest(wordsOf('lost'));
const findDoer = phraseFinder(tableWords('by-whom'));
/** Further away a date is not looked for. */
const reach = 80;
/** "(2017)": a date in brackets right behind; one behind a comma is the event's only where it says who did it. */
const opensBracket = /^[^,;]{0,48}\(\s?(?:\p{L}{1,6}\s)?$/u;
const behindComma = /^[^,;]{0,48},\s(?:\p{L}{1,6}\s)?$/u;

/** What a sentence says of an event at this place of the folded text besides what was done. */
export function detailsOf(from: Passage, start: number, end: number, readAt: string): EventDetails {
  const { text } = from.folded;
  const window = ownWindow(text, start, end, 'repair');
  const [who] = findDoer(text.slice(window.start, window.end));
  const sentence = sentenceAround(text, start, end);
  const span = dateOf(from, datesIn(from, readAt), { start, end, sentence, named: who !== undefined });
  return { ...(span ? { span } : {}), ...(who ? { by: who.value } : {}), ...paperIn(text, window) };
}

/**
 * The words of a sentence that are of an event: from the end of the clause that tells the one before it to the start of
 * the clause that tells the one behind it. Two that share a clause share its doer and its paper ("the saddler renewed
 * the seams and replaced the handle"), unless the second has a doer of its own: then the "and" parts them.
 */
function ownWindow(text: string, start: number, end: number, event: 'repair' | 'purchase') {
  const sentence = sentenceAround(text, start, end);
  const others = [besidePurchase, ...(event === 'repair' ? [purchases] : [])].flatMap((pattern) =>
    Array.from(text.slice(sentence.start, sentence.end).matchAll(pattern), ({ index, 0: words }) => ({
      start: sentence.start + index,
      end: sentence.start + index + words.length,
    })),
  );
  const clause = clauseAround(text, start, end);
  const isApart = (one: { start: number; end: number }) =>
    one.end <= clause.start ||
    one.start >= clause.end ||
    myself.test(one.end <= start ? text.slice(one.end, start) : text.slice(end, one.start));
  const before = Math.max(0, ...others.filter((one) => one.end <= start && isApart(one)).map((one) => one.end));
  const after = Math.min(
    text.length,
    ...others.filter((one) => one.start >= end && isApart(one)).map((one) => one.start),
  );
  const opens = before === 0 ? sentence.start : clauseAround(text, before - 1, before).end;
  const closes = after === text.length ? sentence.end : clauseAround(text, after, after + 1).start;
  return {
    start: opens > start ? (lastJoint(text, before, start) ?? start) : opens,
    end: closes < end ? (lastJoint(text, end, after) ?? after) : closes,
  };
}

/** Where the last "and" between two places stands. */
function lastJoint(text: string, start: number, end: number): number | null {
  const last = Array.from(text.slice(start, end).matchAll(joint)).at(-1);
  return last ? start + last.index : null;
}

interface Place {
  start: number;
  end: number;
  sentence: { start: number; end: number };
  /** The sentence says who did it. */
  named: boolean;
}

/** The date of an event: the next one behind it that no comma parts from it, else the last one before it. */
function dateOf(from: Passage, dates: readonly FoundDate[], at: Place) {
  const { text } = from.folded;
  const near = dates
    .filter(({ form }) => form !== 'relative' && form !== 'without-year' && form !== 'age')
    .map((date) => ({ date, range: foldedRange(from, date) }))
    .filter(({ range: [first, last] }) => first >= at.sentence.start && last <= at.sentence.end);
  for (const { date, range } of near) {
    if (range[0] < at.end) continue;
    // "By the boutique", "with receipt": neither is a purchase here.
    const gap = text.slice(at.end, range[0]).replace(doers, ' ');
    if (gap.length > reach || namesOther(gap)) break;
    if (!/[,;(]/.test(gap) || opensBracket.test(gap) || (at.named && behindComma.test(gap))) return date.span;
  }
  const ahead = near.findLast(({ range }) => range[1] <= at.start);
  if (!ahead) return null;
  const gap = text.slice(ahead.range[1], at.start).replace(doers, ' ');
  // "Bought in 1994, relined": a date that follows a verb of its own is that one's.
  const own = aheadInSentence(text, ahead.range[0]).slice(-32);
  if (gap.length > reach || /[,;]/.test(gap) || ofElse.test(gap)) return null;
  return namesOther(own) ? null : ahead.date.span;
}

/** "Invoice included", "mit Rechnung" of the purchase at this place; "ohne Rechnung" is none. */
export const invoiceIn = (from: Passage, start: number, end: number): { invoice?: true } =>
  paperIn(from.folded.text, ownWindow(from.folded.text, start, end, 'purchase'));

function paperIn(text: string, window: { start: number; end: number }): { invoice?: true } {
  const paper = Array.from(text.slice(window.start, window.end).matchAll(papers)).some((found) => {
    const first = window.start + found.index;
    const last = first + found[0].length;
    const clause = clauseAround(text, first, last);
    if (lost.test(text.slice(clause.start, clause.end))) return false;
    return !isNegated(text, first, last) && !isLeftOpen(text, first, last);
  });
  return paper ? { invoice: true } : {};
}
