import type { Span } from '../../span/types';
import { findConditions } from '../text/condition';
import { parseDates } from '../text/date';
import { findReturns } from '../text/returns';
import type { Condition, Listing, Rating } from '../types';

type Returns = Listing['returns'][number]['value'];

/** What reading dates needs beside the text. */
export interface DateContext {
  language: string | null;
  /** Day of reading, ISO 8601. */
  now: string;
}

/** The condition that a labelled text states first; "used, very good" is the finer of the two. */
export function readConditionWords(text: string): Condition | null {
  const [first, ...others] = findConditions(text, true).map(({ value }) => value);
  return first === 'used' ? (others.find((other) => other !== 'used' && other !== 'new') ?? first) : (first ?? null);
}

/** The first whole number of a text, digits grouped or not; null when there is none. */
export function readCount(text: string): number | null {
  const match = /\d{1,3}(?:[.,\u00A0\u202F ']\d{3})+(?!\d)|\d{1,9}/.exec(text);
  const digits = match?.[0].replace(/\D/g, '');
  return digits ? Number(digits) : null;
}

/** The first date of a text. */
export const readDate = (text: string, context: DateContext): Span | null => parseDates(text, context)[0]?.span ?? null;

/** Share of the best rating, as "98 %", "4.8 / 5", "4.8 out of 5" or "4,8 sur 5" say it. */
export function readRatingWords(text: string): Rating | null {
  const words = text.slice(0, 200);
  const number = (digits: string | undefined): number => Number((digits ?? '').replace(',', '.'));
  const count =
    /[(（]\s*([\d.,\u00A0\u202F ]{1,10})/.exec(words)?.[1] ??
    /(\d[\d.,]*)\s*\p{L}{4,}/u.exec(
      words.replace(/^.*?(?:%|\/\s*\d+|\d+\s*(?:sur|von|su|de|van|out of)\s*\d+)/, ''),
    )?.[1];
  const counted = count === undefined ? null : readCount(count);
  const percent = /(\d{1,3}(?:[.,]\d+)?)\s?%/.exec(words);
  if (percent && number(percent[1]) <= 100) return { share: number(percent[1]) / 100, count: counted, words };
  const scale = /(\d{1,2}(?:[.,]\d+)?)\s*(?:\/|out of|of|sur|von|su|de|van)\s*(\d{1,2})\b/i.exec(words);
  if (!scale || number(scale[2]) === 0 || number(scale[1]) > number(scale[2])) return null;
  return { share: Math.round((number(scale[1]) / number(scale[2])) * 10_000) / 10_000, count: counted, words };
}

/** Return terms that a text states. */
export function readReturnsWords(text: string): Returns | null {
  const [found] = findReturns(text);
  return found ? { ...found.value, words: found.words } : null;
}
