import type { Span } from '../../span/types';
import { findConditions } from '../../text/condition';
import { parseDates } from '../../text/date';
import { anyLanguage } from '../../text/each-language';
import { plainGrade, veryGoodGrade } from '../../text/grade-words';
import { findRatings } from '../../text/rating';
import { findReturns } from '../../text/returns';
import type { Condition, Listing, Rating } from '../types';

type Returns = Listing['returns'][number]['value'];

/** What reading dates needs beside the text. */
export interface DateContext {
  language: string | null;
  /** Day of reading, ISO 8601. */
  now: string;
}

/** Grades that stand alone beside a label. */
const veryGood = new RegExp(anyLanguage(veryGoodGrade), 'iu');
const plainUse = new RegExp(`^(?:${anyLanguage(plainGrade)})$`, 'iu');

/** "B+ (A = as new, B = good, C = worn)": what a dealer's legend says of the grade that stands ahead of it. */
const gradeWithLegend = /^\s{0,2}([A-Z]{1,2})[+-]?(?=[\s(:;,]).{0,160}?(?<![\p{L}\p{N}])\1\s?[=:]\s?([^,;/)\n]{2,40})/u;

/** The condition that a labelled text states first; "used, very good" is the finer of the two. */
export function readConditionWords(text: string): Condition | null {
  const legend = gradeWithLegend.exec(text)?.[2];
  if (legend !== undefined) return readConditionWords(legend);
  const [first, ...others] = findConditions(text, true).map(({ value }) => value);
  const grade = veryGood.test(text) ? 'used-very-good' : null;
  if (first === undefined) return grade ?? (plainUse.test(text) ? 'used' : null);
  if (first === 'used' && grade) return grade;
  return first === 'used' ? (others.find((other) => other !== 'used' && other !== 'new') ?? first) : first;
}

/** The first date of a text, and whether its characters may mean another day. */
export function readDate(text: string, context: DateContext): { span: Span; ambiguous: boolean } | null {
  const [found] = parseDates(text, context);
  return found ? { span: found.span, ambiguous: (found.ambiguous?.length ?? 0) > 1 } : null;
}

/** The rating that a text gives first. */
export function readRatingWords(text: string): Rating | null {
  const [found] = findRatings(text.slice(0, 400));
  return found ? { share: Math.round(found.share * 10_000) / 10_000, count: found.count, words: found.words } : null;
}

/** Return terms that a text states. */
export function readReturnsWords(text: string): Returns | null {
  const [found] = findReturns(text);
  return found ? { ...found.value, words: found.words } : null;
}
