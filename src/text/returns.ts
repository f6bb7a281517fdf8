import { isAboutAnother, isNegated } from './clause';
import { aheadOf } from './ends';
import { foldWords, type Said, sourceRange } from './fold';
import { tableWords, wordsOf } from './lexicon';
import { anyOf, phraseFinder, phrasePattern } from './phrases';
import { Taken } from './taken';

export interface ReturnTerms {
  accepted: boolean;
  /** Days within which the piece may go back, null when not said. */
  days: number | null;
}

const find = phraseFinder(tableWords('returns'));
const countOf = (topic: 'days' | 'weeks', most: number) =>
  new RegExp(`(?<!\\d)(\\d{1,${most}})[\\s-]{0,2}(?:${anyOf(wordsOf(topic))})`, 'u');
const daysNear = countOf('days', 3);
const weeksNear = countOf('weeks', 2);
/** "Within a week", "innerhalb einer Woche". */
const oneWeek = new RegExp(
  `(?<!\\p{L})(?:an?|one|une?|eine[rn]?|una|een)\\s(?:${anyOf(wordsOf('weeks'))})(?!\\p{L})`,
  'u',
);

/** Days stated within the same few words. */
function daysAround(text: string, start: number, end: number): number | null {
  const near =
    (aheadOf(text, start, 24) + text.slice(start, end + 40))
      .split(/[\n.!?;]/u)
      .find((part) => daysNear.test(part) || weeksNear.test(part) || oneWeek.test(part)) ?? '';
  const days = daysNear.exec(near);
  const weeks = weeksNear.exec(near);
  const count = days ? Number(days[1]) : weeks ? Number(weeks[1]) * 7 : oneWeek.test(near) ? 7 : 0;
  return count > 0 ? count : null;
}

/** A field of its own: "Returns: no", "Rückgabe: 14 Tage", "返品：不可". */
const labelled = new RegExp(
  `(?:${phrasePattern(wordsOf('returns-label')).source})\\s{0,2}:\\s{0,2}(?:(${phrasePattern(wordsOf('refused-in-field')).source})|${phrasePattern(wordsOf('accepted-in-field')).source}|\\d{1,3}[\\s-]{0,2}(?:${phrasePattern(wordsOf('days')).source}))`,
  'gu',
);

/** "You can send it back within 30 days", "innerhalb von 14 Tagen zurückschicken", "remboursement sous 14 jours". */
const sentBack = phrasePattern(wordsOf('sent-back'));

/** "Rückgabe möglich?": a buyer's question. */
const asks = /^[^.!?\n]{0,24}[?？]/u;
const longestAsking = 2 * 24 + 1;

const nouns = phrasePattern(wordsOf('return-noun'));
/** "Rücknahme gibt es nicht", "devoluciones no": the denial ends the clause. Refusals of all kinds are short. */
const deniedBehind = new RegExp(
  `^(?:\\s[\\p{L}']{1,12}){0,3}?\\s(?:nicht|niet|geen|${phrasePattern(wordsOf('refused-in-field')).source})\\s?(?=$|[.,;!?)\\n])`,
  'u',
);
/** A word for returns that its clause denies; a label with its value is read as a field. */
const isDenied = (text: string, from: number, to: number): boolean =>
  text[to] !== ':' && (isNegated(text, from, to) || deniedBehind.test(text.slice(to, to + 64)));

/** Return terms said in a text. A denied "returns accepted" is a refusal; refusals hold whatever stands before them. */
export function findReturns(text: string): Said<ReturnTerms>[] {
  const folded = foldWords(text);
  // "Items made before 1990 are sold as seen": not said of this one.
  const own = find(folded).filter(
    (hit) =>
      !isAboutAnother(folded.text, hit.foldedStart, hit.foldedEnd) &&
      !asks.test(folded.text.slice(hit.foldedEnd, hit.foldedEnd + longestAsking)),
  );
  const phrases = own.map(({ value, foldedStart, foldedEnd }) => ({
    accepted: value === 'accepted' && !isNegated(folded.text, foldedStart, foldedEnd),
    from: foldedStart,
    to: foldedEnd,
  }));
  const fields = [...folded.text.matchAll(labelled)].map((match) => ({
    accepted: match[1] === undefined,
    from: match.index,
    to: match.index + match[0].length,
  }));
  const taken = new Taken(folded.text.length);
  for (const phrase of phrases) taken.take(phrase.from, phrase.to);
  const within = Array.from(folded.text.matchAll(sentBack), ({ index, 0: words }) => ({
    accepted: true,
    from: index,
    to: index + words.length,
  })).filter(({ from, to }) => !isNegated(folded.text, from, to) && daysAround(folded.text, from, to) !== null);
  const denials = Array.from(folded.text.matchAll(nouns), ({ index, 0: words }) => ({
    accepted: false,
    from: index,
    to: index + words.length,
  })).filter(
    ({ from, to }) => isDenied(folded.text, from, to) && !asks.test(folded.text.slice(to, to + longestAsking)),
  );
  const alone = [...fields, ...within, ...denials].filter((field) => !taken.overlaps(field.from, field.to));
  return [...phrases, ...alone]
    .sort((a, b) => a.from - b.from)
    .map(({ accepted, from, to }) => {
      const days = accepted ? daysAround(folded.text, from, to) : null;
      return { value: { accepted, days }, ...sourceRange(folded, from, to) };
    });
}
