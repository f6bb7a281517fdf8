import {
  clauseAround,
  type FoundDate,
  isLeftOpen,
  isNegated,
  phraseFinder,
  phrasePattern,
  sentenceAround,
  tableWords,
  wordsOf,
} from '../text';
import { datesIn } from './dates-in';
import { foldedRange, type Passage } from './passage';
import type { EventDetails } from './types';

/*
 * When something was done to the piece, by whom, and whether there is a paper of it: what stands in the same sentence,
 * and beside no other verb of making, buying or mending. Common practice, no source.
 */

const ofMending = phrasePattern(wordsOf('replaced', 'restored', 're-dyed', 'dyed', 'appraised'));
const ofElse = phrasePattern(wordsOf('bought', 'made-verb'), 'u');
/** Whether words name what else was done: a purchase, a making, a repair of its own. */
const namesOther = (words: string): boolean => ofElse.test(words) || words.search(ofMending) >= 0;
const doers = phrasePattern([...Object.values(tableWords('by-whom')).flat(), ...wordsOf('invoice')]);
const papers = phrasePattern(wordsOf('invoice'));
/** "Receipt lost". */
const lost = phrasePattern(wordsOf('lost'), 'u');
const findDoer = phraseFinder(tableWords('by-whom'));
/** Further away a date is not looked for. */
const reach = 80;
/** "(2017)": a date in brackets right behind; one behind a comma is the event's only where it says who did it. */
const opensBracket = /^[^,;]{0,48}\(\s?(?:\p{L}{1,6}\s)?$/u;
const behindComma = /^[^,;]{0,48},\s(?:\p{L}{1,6}\s)?$/u;

/** What a sentence says of an event at this place of the folded text besides what was done. */
export function detailsOf(from: Passage, start: number, end: number, readAt: string): EventDetails {
  const { text } = from.folded;
  const sentence = sentenceAround(text, start, end);
  const window = ownWindow(text, sentence, start, end);
  const [who] = findDoer(text.slice(window.start, window.end));
  const span = dateOf(from, datesIn(from, readAt), { start, end, sentence, named: who !== undefined });
  return { ...(span ? { span } : {}), ...(who ? { by: who.value } : {}), ...invoiceIn(from, start, end) };
}

/** The words of a sentence around an event up to the events beside it. */
function ownWindow(text: string, sentence: { start: number; end: number }, start: number, end: number) {
  const before = Array.from(text.slice(sentence.start, start).matchAll(ofMending)).at(-1);
  const after = text.slice(end, sentence.end).search(ofMending);
  return {
    start: before ? sentence.start + before.index + before[0].length : sentence.start,
    end: after < 0 ? sentence.end : end + after,
  };
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
  const own = text.slice(Math.max(at.sentence.start, ahead.range[0] - 32), ahead.range[0]);
  if (gap.length > reach || /[,;]/.test(gap) || ofElse.test(gap)) return null;
  return namesOther(own) ? null : ahead.date.span;
}

/** "Invoice included", "mit Rechnung" in the sentence; "ohne Rechnung" is none. */
export function invoiceIn(from: Passage, start: number, end: number): { invoice?: true } {
  const { text } = from.folded;
  const sentence = sentenceAround(text, start, end);
  const paper = Array.from(text.slice(sentence.start, sentence.end).matchAll(papers)).some((found) => {
    const first = sentence.start + found.index;
    const last = first + found[0].length;
    const clause = clauseAround(text, first, last);
    if (lost.test(text.slice(clause.start, clause.end))) return false;
    return !isNegated(text, first, last) && !isLeftOpen(text, first, last);
  });
  return paper ? { invoice: true } : {};
}
