import { foldWords, phraseFinder, tableWords } from '../text';
import { carriersOf } from './entry-carrier';
import { constructionOf } from './entry-part';
import { systemOf } from './entry-system';
import type { Say } from './propose';
import { sentencesOf } from './prose/sentences';
import { readExamples } from './said/example';
import type { SaidLayout } from './said/layout-words';
import { readCounts } from './said/number';
import { onePeriod } from './said/one-period';
import { partsIn } from './said/part';
import { readPeriods, type SaidPeriod } from './said/period';
import { isPeriod } from './said/used-text';
import { isOnPiece, opensPlaceOnPiece, readWhere } from './said/where';
import type { Proposal } from './types';
import { tellingFinder, wholeWords } from './words';

const materials = phraseFinder(tableWords('material'));
const isOf = tellingFinder('is-of');
const without = tellingFinder('no-code');

/** "Zip of brass", "brass zip": a part and what it was of, and nothing more; null where a piece says anything else. */
function partOfPiece(piece: string): { part: Parameters<typeof constructionOf>[0]; is: string } | null {
  const [part, ...more] = partsIn(piece);
  if (!part || more.length > 0) return null;
  const [ahead, behind] = [piece.slice(0, part.start).trim(), piece.slice(part.end).trim()];
  const is = part.start <= 2 || article.test(ahead) ? behind : behind === '' ? ahead : null;
  const led = is !== null && (isOf(is)[0]?.start === 0 || /^[:：]/.test(is));
  if (is === null || is.length > longestMaterial || readPeriods(is).length > 0 || opensPlaceOnPiece(is)) return null;
  const [verb] = isOf(is);
  const plain = verb?.start === 0 ? is.slice(verb.end).trimStart() : is.replace(/^[:：]\s?/u, '');
  return led || materials(is).length > 0 ? { part: part.value, is: plain } : null;
}
const longestMaterial = 50;
const article = /^(?:the|all|their|die|der|das|la|les?|il|lo|i|gli|el|los|las|de|het|l['’])$/iu;

/** The parts that a sentence lists, each with its material; null where it tells anything else. */
function partsOf(sentence: string): { part: Parameters<typeof constructionOf>[0]; is: string }[] | null {
  const pieces = sentence
    .replace(/[.;。\s]{1,4}$/u, '')
    .split(/[,;、]\s?/u)
    .map(partOfPiece);
  return pieces.every((one) => one !== null) ? pieces : null;
}

/** "Stamp under the flap: two figures": where it sits, before the colon that what it is made of stands behind. */
function placedAhead(sentence: string): { where: string; rest: string } | null {
  const colon = /[:：]\s/u.exec(sentence);
  if (!colon) return null;
  const lead = sentence.slice(0, colon.index);
  const where = readWhere(`${lead}.`, true)?.where ?? placeBehindNoun(lead);
  return where === null || !isOnPiece(where) ? null : { where, rest: sentence.slice(colon.index + colon[0].length) };
}

/** "It sits on the underside of the flap": where, in a sentence of its own; of how a code is built it tells nothing. */
function placedAlone(sentence: string, day: string): string | null {
  if (readCounts(sentence).length > 0 || readExamples(sentence, day).length > 0) return null;
  const where = readWhere(sentence, true)?.where.replace(/,\s[^,]{3,40}$/u, (tail) => (isOnPiece(tail) ? tail : ''));
  return where !== undefined && isOnPiece(where) ? where : null;
}

const codeWords = tellingFinder('code');
/** "The letter stamp (1975–1988)": a head that names the code beside its one time; the time alone. */
export function timeOfCode(head: string): string | null {
  const [period, ...more] = readPeriods(head);
  if (!period || more.length > 0 || period.form === 'year' || head.length > longestHead) return null;
  return codeWords(head).length > 0 && /[([]\s?$/u.test(head.slice(0, period.start))
    ? head.slice(period.start, period.end)
    : null;
}
const longestHead = 60;

/** "Stempel unter der Klappe". */
function placeBehindNoun(lead: string): string | null {
  const [noun] = codeWords(lead);
  const where = noun && noun.start <= 2 ? lead.slice(noun.end).trim() : '';
  return opensPlaceOnPiece(where) ? where : null;
}

/**
 * What an entry under a period tells in several sentences: that there was no code, where it sat, how it was built, and what
 * parts were of; `denied` are the words of the head that say that there was none: "1966–1981: stamp under the flap: two figures for the year. Zip of nickel". Null where its sentences are of one kind.
 */
export function eraOf(
  head: string,
  body: string,
  day: string,
  say: Say,
  earlier: SaidLayout | null,
  denied = '',
): Proposal[] | null {
  const periods = readPeriods(head);
  const found: Proposal[] = [];
  const rest: string[] = [];
  for (const { text } of sentencesOf(body)) {
    const parts = partsOf(text);
    const placed = parts ? null : placedAhead(text);
    const alone = parts || placed ? null : placedAlone(text, day);
    if (alone !== null) {
      found.push(...carriersOf(null, alone, say, periods));
      continue;
    }
    if (parts) found.push(...parts.flatMap(({ part, is }) => constructionOf(part, is, say, periods)));
    if (placed) found.push(...carriersOf(null, placed.where, say, periods));
    if (!parts) rest.push(placed?.rest ?? text);
  }
  if (found.length === 0) return null;
  if (denied) return [...(systemOf(head, denied, day, say, earlier) ?? []), ...found];
  return [...(rest.length > 0 ? (systemOf(head, rest.join(' '), day, say, earlier) ?? []) : []), ...found];
}

/**
 * "Stamp: since 1960 under the flap. Four figures, week and year": under a label that names the code its time and its place,
 * and behind them how it is built.
 */
export function codeAndPlaceOf(body: string, day: string, say: Say, earlier: SaidLayout | null): Proposal[] | null {
  const [first, ...others] = sentencesOf(body).map(({ text }) => text.replace(/[.。]\s{0,2}$/u, ''));
  const [period, ...more] = first === undefined ? [] : readPeriods(first);
  if (!period || more.length > 0 || period.start > 3 || period.form === 'year' || without(body).length > 0) return null;
  const where = first!.slice(period.end).replace(/^[\s,]{1,4}/u, '');
  if (!opensPlaceOnPiece(where) || !isOnPiece(where)) return null;
  const time = first!.slice(period.start, period.end);
  const system = others.length > 0 ? systemOf(time, others.join('. '), day, say, earlier) : [];
  return system && [...stampedOf(period, say), ...carriersOf(null, where, say, [period]), ...system];
}

const stampedOf = ({ form, used: [from], about }: SaidPeriod, say: Say): Proposal[] =>
  form === 'since' && from !== null && about.length === 0 ? [say({ kind: 'stamped', used: [from, null] })] : [];

const afterwards = wholeWords('afterwards');
/** The head of an entry that goes on from the one before it, as the time that it means: "after that" behind "1967 to 1980". */
export function timeOfLinked(head: string, before: string | undefined): string | null {
  const isLink = afterwards.has(foldWords(head.replace(/[\s,:]{1,4}$/, '')).text);
  const [period] = isLink && before !== undefined && isPeriod(before) ? readPeriods(before) : [];
  const end = period && onePeriod(period.used)?.[1];
  return end ? `since ${Number(end) + 1}` : null;
}
