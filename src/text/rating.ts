import { aheadOf } from './ends';
import { type Folded, foldWords, sourceRange } from './fold';
import { wordsOf } from './lexicon';
import { anyOf, phrasePattern } from './phrases';
import { Taken } from './taken';

/** A rating as shown: 4.8 of 5, 98 of 100 … */
export interface FoundRating {
  value: number;
  /** The scale's best value as written, null when the text does not say. */
  best: number | null;
  /** Share of the scale's best, 0 to 1; without a written scale 5 is assumed, above that 10, above that 100. */
  share: number;
  count: number | null;
  start: number;
  end: number;
  words: string;
}

const amount = '(\\d{1,3}(?:[.,]\\d{1,3})?)';
const stars = anyOf(wordsOf('stars'));
const outOf = new RegExp(
  `(?<![\\d.,/])${amount}\\s{0,3}(?:(?:${stars}|★)\\s{0,2})?(?:${anyOf(wordsOf('out-of'))}|/)\\s{0,3}(\\d{1,3}(?:[.,]0{1,2})?)(?![\\d%/]|[.,]\\d)`,
  'gu',
);
const japaneseOutOf = new RegExp(`(?<!\\d)(\\d{1,3})つ星のうち\\s?${amount}`, 'gu');
const percent = new RegExp(`(?<![\\d.,-])${amount}\\s?%`, 'gu');
const withStars = new RegExp(
  `(?<![\\d.,/])${amount}\\s{0,3}(?:[★⭐☆]|[- ]?(?:${stars})(?![\\p{L}]))|[★⭐]\\s{0,3}${amount}`,
  'gu',
);
const label = phrasePattern(wordsOf('rating-label'));
const labelledPercent = new RegExp(
  `(?:${label.source})[\\s:=-]{0,4}${amount}\\s?%(?!\\s?(?:off|rabatt|sconto|de remise|de descuento|korting))`,
  'gu',
);
const labelled = new RegExp(`(?:${label.source})[\\s:=-]{0,4}${amount}(?![\\d/]|\\s?%|[.,]\\d)`, 'gu');
const wholeNumber = new RegExp(`^\\s*(\\d{1,3}(?:[.,]\\d{1,3})?)\\s*(?:\\(|$|${anyOf(wordsOf('average'))})`, 'u');
const positive = new RegExp(`^\\s{0,2}(?:${anyOf(wordsOf('positive'))})`, 'u');

const countWords = phrasePattern(wordsOf('ratings-counted'));
const counted = new RegExp(
  `(?<![\\d.,])(\\d{1,3}(?:[.,' ]\\d{3})+|\\d{1,9})\\s{0,2}\\+?\\s{0,3}(?:[\\p{L}]{1,12}\\s)?(?:${countWords.source})`,
  'u',
);
const inBrackets = /^\s{0,3}(?:★|⭐|stars?)?\s{0,3}\(\s{0,3}(\d{1,3}(?:[.,' ]\d{3})+|\d{1,9})\s{0,3}\)/u;

/** Best values that scales have; no one rates out of 7. */
const scales = new Set([3, 4, 5, 6, 10, 20, 100]);

const toNumber = (text: string) => Number(text.replace(',', '.'));
const toCount = (text: string) => Number(text.replace(/\D/g, ''));

/** The number of ratings stated near a rating: "(178)", "128 Bewertungen". */
function countNear(text: string, start: number, end: number): number | null {
  const bracket = inBrackets.exec(text.slice(end, end + 30));
  if (bracket) return toCount(bracket[1] as string);
  const after = counted.exec(text.slice(end, end + 60));
  if (after) return toCount(after[1] as string);
  const before = counted.exec(aheadOf(text, start, 50));
  return before ? toCount(before[1] as string) : null;
}

function assumedBest(value: number): number {
  if (value <= 5) return 5;
  return value <= 10 ? 10 : 100;
}

interface Raw {
  value: number;
  best: number | null;
  start: number;
  end: number;
}

function rawRatings(text: string): Raw[] {
  const found: Raw[] = [];
  const add = (match: RegExpMatchArray, value: number, best: number | null) =>
    found.push({ value, best, start: match.index!, end: match.index! + match[0].length });
  for (const match of text.matchAll(outOf)) {
    // "5 out of 3 reviews": the second number counts, it is no scale.
    const second = match[2] as string;
    const end = match.index + match[0].length;
    const said = counted.exec(text.slice(end - second.length, end + 16));
    const counts = said?.index === 0 && (said[1] === second || !scales.has(toNumber(second)));
    add(match, toNumber(match[1] as string), counts ? null : toNumber(second));
  }
  const whole = text.trim();
  for (const match of text.matchAll(japaneseOutOf)) add(match, toNumber(match[2] as string), Number(match[1]));
  for (const match of text.matchAll(percent))
    if (
      positive.test(text.slice(match.index + match[0].length, match.index + match[0].length + 24)) ||
      whole === match[0].trim()
    )
      add(match, toNumber(match[1] as string), 100);
  for (const match of text.matchAll(labelledPercent)) add(match, toNumber(match[1] as string), 100);
  for (const match of text.matchAll(withStars)) add(match, toNumber((match[1] ?? match[2]) as string), null);
  for (const match of text.matchAll(labelled)) add(match, toNumber(match[1] as string), null);
  const bare = wholeNumber.exec(text)?.[1];
  if (bare !== undefined) {
    const start = text.indexOf(bare);
    found.push({ value: toNumber(bare), best: null, start, end: start + bare.length });
  }
  return found;
}

/**
 * Ratings of a text, most exact first: "4.5/5", "4,1 su 5", "98 % positive", "4.8 ★ (178)", or a rating field's bare
 * number. A value above its scale, and a scale that no one uses (3 of 7), are no rating.
 */
export function findRatings(text: string): FoundRating[] {
  const folded = foldWords(text);
  const kept: FoundRating[] = [];
  const taken = new Taken(folded.text.length);
  for (const raw of rawRatings(folded.text)) {
    if (raw.best !== null && (!scales.has(raw.best) || raw.value > raw.best)) continue;
    if (raw.value > 100 || taken.overlaps(raw.start, raw.end)) continue;
    taken.take(raw.start, raw.end);
    kept.push(toFound(folded, raw));
  }
  return kept.sort((a, b) => Number(b.best !== null) - Number(a.best !== null) || a.start - b.start);
}

function toFound(folded: Folded, raw: Raw): FoundRating {
  const share = Math.min(1, raw.value / (raw.best ?? assumedBest(raw.value)));
  const range = sourceRange(folded, raw.start, raw.end);
  return { value: raw.value, best: raw.best, share, count: countNear(folded.text, raw.start, raw.end), ...range };
}
