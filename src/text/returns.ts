import {
  aheadInClause,
  behindInClause,
  clauseAround,
  isAboutAnother,
  isNegated,
  rightAhead,
  rightBehind,
} from './clause';
import { anyLanguage } from './each-language';
import { aheadOf } from './ends';
import { foldWords, type Said, sourceRange } from './fold';
import { itself } from './joint-words';
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
  `(?:${phrasePattern(wordsOf('an')).source})\\s(?:${anyOf(wordsOf('weeks'))})(?!\\p{L})`,
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
const no = phrasePattern(wordsOf('negation')).source;
const allowed = phrasePattern(wordsOf('allowed')).source;
/** "Rücknahme gibt es nicht", "devoluciones no": the denial ends the clause. Refusals of all kinds are short. */
const deniedBehind = new RegExp(
  `^(?:\\s[\\p{L}']{1,12}){0,3}?\\s(?:${no}|${phrasePattern(wordsOf('refused-in-field')).source})\\s?(?=$|[.,;!?)\\n])`,
  'u',
);
/** "Les retours ne sont pas possibles", "il reso non è previsto": what is allowed stands behind the denial. */
const notAllowedBehind = new RegExp(
  `^(?:\\s[\\p{L}']{1,12}){0,4}?\\s(?:${no})\\s(?:[\\p{L}']{1,12}\\s){0,2}?(?:${allowed})`,
  'u',
);
/** "Non è possibile il reso", "il n'est pas possible de faire un retour". */
const notAllowedAhead = new RegExp(
  `(?:${no})\\s(?:[\\p{L}']{1,8}\\s){0,2}?(?:${allowed})\\s(?:[\\p{L}']{1,8}\\s){0,3}$`,
  'u',
);
const singular = phrasePattern(wordsOf('returns-label'));
/** A word that may mean more than what goes back ("reso"), denied as such. */
const isNotAllowed = (text: string, from: number, to: number): boolean =>
  notAllowedBehind.test(rightBehind(text, to)) || notAllowedAhead.test(rightAhead(text, from));

/** "It cannot be returned", "das Stück kann nicht zurückgegeben werden": of the piece, and of no time after which it cannot. */
const barred = new RegExp(
  `^\\s?(?:(?:${phrasePattern(wordsOf('article', 'possessive', 'this-one')).source})\\s?)?(?:(?:${anyLanguage(itself)}|${phrasePattern(wordsOf('bag', 'piece', 'first-person')).source})\\s)?(?:(?:${no})\\s(?:si\\s|se\\s)?)?(?:${phrasePattern(wordsOf('can')).source})\\s(?:[\\p{L}']{1,10}\\s){0,3}$`,
  'u',
);
const closesSoon = /^(?:\s[\p{L}']{1,12}){0,3}\s?$/u;
function isBarred(text: string, from: number, to: number): boolean {
  if (!isNegated(text, from, to) || daysAround(text, from, to) !== null) return false;
  return barred.test(aheadInClause(text, from)) && closesSoon.test(behindInClause(text, to));
}

/** A word for returns that its clause denies; a label with its value is read as a field. */
const isDenied = (text: string, from: number, to: number): boolean =>
  text[to] !== ':' &&
  (isNegated(text, from, to) || deniedBehind.test(rightBehind(text, to)) || isNotAllowed(text, from, to));

/** A refusal with what makes it one, where that stands apart from the word: "les retours ne sont pas possibles". */
function wholeRefusal(text: string, from: number, to: number): { from: number; to: number } {
  const after = rightBehind(text, to);
  const behind = (notAllowedBehind.exec(after) ?? deniedBehind.exec(after))?.[0].trimEnd().length ?? 0;
  if (behind > 0) return { from, to: to + behind };
  const clause = clauseAround(text, from, to);
  if (isBarred(text, from, to))
    return { from: from - text.slice(clause.start, from).trimStart().length, to: clause.end };
  return { from: from - (notAllowedAhead.exec(rightAhead(text, from))?.[0].length ?? 0), to };
}

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
  const placesOf = (pattern: RegExp, accepted: boolean) =>
    Array.from(folded.text.matchAll(pattern), ({ index, 0: words }) => ({
      accepted,
      from: index,
      to: index + words.length,
    }));
  const within = placesOf(sentBack, true).filter(
    ({ from, to }) => !isNegated(folded.text, from, to) && daysAround(folded.text, from, to) !== null,
  );
  const denials = [
    ...placesOf(nouns, false).filter(({ from, to }) => isDenied(folded.text, from, to)),
    ...placesOf(singular, false).filter(({ from, to }) => isNotAllowed(folded.text, from, to)),
    ...placesOf(sentBack, false).filter(({ from, to }) => isBarred(folded.text, from, to)),
  ].filter(({ to }) => !asks.test(folded.text.slice(to, to + longestAsking)));
  const alone = [...fields, ...within, ...denials].filter(({ from, to }) => {
    const isFree = !taken.overlaps(from, to);
    taken.take(from, to);
    return isFree;
  });
  return [...phrases, ...alone]
    .sort((a, b) => a.from - b.from)
    .map(({ accepted, from, to }) => {
      const days = accepted ? daysAround(folded.text, from, to) : null;
      const whole = accepted ? { from, to } : wholeRefusal(folded.text, from, to);
      return { value: { accepted, days }, ...sourceRange(folded, whole.from, whole.to) };
    });
}
