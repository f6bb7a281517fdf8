import { findPlaces, foldWords } from '../../text';
import { andWords } from '../and-words';
import { namesMonth } from '../said/month';
import type { SaidPeriod } from '../said/period';
import { readPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';
import { placeNames } from './place-names';
import { plantBeside, type SaidPlant } from './said-plant';

const letterWords = tellingFinder('letters');
const plantWords = tellingFinder('plant');

/** A code and the name beside it: where both stand, and where each does. */
interface Pair {
  code: string;
  at: number;
  name: string;
  start: number;
  end: number;
  /** Whether other words stand between the name and the code. */
  apart?: true;
}

const codes = /(?<![\p{L}\d'’.&-])\p{Lu}{1,3}(?![\p{L}\d'’&-]|\.(?!\s{0,3}$)|\s\d)/gu;
/** Words of one letter, which begin a sentence with a capital: "A bag is …", "E la borsa è …". */
const wordsOfOneLetter = /^[AEIOUYÀÉÈ]$/;

/** What may stand between a code and the name of its town: signs and a few small words, "was", ", de", "steht für". */
const between = /^[\s,(=:–—"„“«]{0,40}(?:[dl]['’]|\p{Ll}{1,10}['’]?[\s,(]{1,3}(?:[dl]['’])?){0,5}$/u;
const farthest = 44;

const plain = (text: string): string => foldWords(text).text;
/** Letters of codes are chosen after towns: the name begins with the code's first. */
const isInitial = (code: string, name: string): boolean => plain(name).startsWith(plain(code.slice(0, 1)));

/** "Size S, made in Spain": a letter that is said to be of something else. */
const sizeWords = tellingFinder('size-word');
function codesIn(text: string) {
  const ofSize = new Set(sizeWords(text).map(({ end }) => end + (/\s/.test(text.charAt(end)) ? 1 : 0)));
  return [...text.matchAll(codes)].filter(
    ({ 0: code, index }) => (index > 0 || !wordsOfOneLetter.test(code)) && !ofSize.has(index),
  );
}

const farthestUsed = 80;
const withLetter =
  /(?<!\p{L})(?:with|mit|avec|con|met|using|used|stamped|stempelte|sous)\s(?:(?:the|an?|l[ae]|une?|el|il|una|dem|den|der|die|das|einem|einer|het|een|de)\s)?(?:\p{L}{4,16}\s)?$/iu;
/** "A workshop in Peiting, which stamped with P": the name comes first, then that its pieces bore a letter, and which. */
function nameUsedAt(
  text: string,
  names: readonly RegExpExecArray[],
  code: string,
  at: number,
  from: number,
): RegExpExecArray | undefined {
  const lead = withLetter.exec(text.slice(Math.max(0, at - 40), at))?.[0];
  if (lead === undefined) return undefined;
  const name = names.findLast(({ index }) => index < at - lead.length && index >= Math.max(from, at - farthestUsed));
  const isIts = name && (isInitial(code, name[0]) || findPlaces(name[0]).some(({ form }) => form === 'name'));
  // "Achern with A": right behind the name; else the sentence speaks of workshops.
  const isNext = name !== undefined && name.index + name[0].length === at - lead.length - 1;
  return isIts && (isNext || plantWords(text).length > 0) ? name : undefined;
}

/** Codes each beside a name that begins as they do: behind it in brackets, or before it with small words between. */
function pairsIn(text: string): Pair[] {
  const written = codesIn(text);
  const named = [...text.matchAll(placeNames)].filter(({ 0: name }) => !namesMonth(name));
  const found: Pair[] = [];
  for (const [at, { 0: code, index }] of written.entries()) {
    const end = index + code.length;
    const inBracket = /\(\s?$/.test(text.slice(0, index));
    const before = named.findLast((one) => one.index < index);
    const behind = named.find((one) => one.index >= end && one.index < (written[at + 1]?.index ?? text.length));
    const used = nameUsedAt(text, named, code, index, found.at(-1)?.end ?? 0);
    if (used) {
      found.push({ code, at: index, name: used[0], start: used.index, end, apart: true });
      continue;
    }
    const ahead =
      inBracket && before && /^\s?\(\s?$/.test(text.slice(before.index + before[0].length, index)) ? before : undefined;
    const name = ahead ?? (behind && behind.index - end <= farthest ? behind : undefined);
    if (!name || !isInitial(code, name[0])) continue;
    const gap = ahead ? '(' : text.slice(end, name.index);
    // "C Cluny" goes on from another pair; alone it may be anything.
    const isListed = /[:：]\s$/u.test(text.slice(0, index));
    if (!between.test(gap) || (gap.trim() === '' && found.length === 0 && !isListed)) continue;
    const [start, close] = [Math.min(index, name.index), Math.max(end, name.index + name[0].length)];
    found.push({ code, at: index, name: name[0], start, end: close });
  }
  return found;
}

/** "and, from 1985, MA": what parts a time from the pair before it stands ahead of it, and nothing of the kind behind. */
const conjunction = new RegExp(`(?:;|(?<!\\p{L})(?:${andWords}))[\\s,–—-]{1,4}$`, 'u');
const opensPair = new RegExp(`^[\\s,–—-]{0,3}(?:(?!(?:${andWords})\\s)\\p{Ll}{1,8}\\s){0,3}$`, 'u');

/** The pair that a period is of: within it, behind it, or before it where a comma or "and" parts it from the one before. */
function pairOf(period: SaidPeriod, pairs: readonly Pair[], alone: readonly number[], text: string): Pair | undefined {
  const next = pairs.find(({ end }) => end > period.start);
  const last = pairs.findLast(({ end }) => end <= period.start);
  if (next !== undefined && next.start <= period.start) return next;
  // "S is Stroud; a few from the late 1970s have an N": of the clause that it stands in.
  if (next !== undefined && last !== undefined && /[;.]\s/u.test(text.slice(last.end, period.start))) return next;
  const isParted = last === undefined ? period.start <= opening : conjunction.test(text.slice(last.end, period.start));
  // "M Murrhardt, ab 1984 auch T": behind a comma, and without one before the pair.
  const leads =
    next !== undefined &&
    /,\s$/u.test(text.slice(0, period.start)) &&
    /^\s(?:\p{Ll}{2,12}\s){1,2}$/u.test(text.slice(period.end, next.start));
  if (leads) return next;
  if (next !== undefined && isParted && opensPair.test(text.slice(period.end, next.start))) return next;
  // What stands behind a code of which no name is told is of that one.
  return last !== undefined && !alone.some((at) => at > last.end && at < period.start) ? last : undefined;
}
const opening = 3;

/** A sentence longer than this is a muddle: its slots are held against each other. */
const longest = 400;

/** "They worked in Bulgaria as well, with the letter B": a country is where pieces were made. */
const isOfWorkshop = (text: string, name: string): boolean =>
  plantWords(text).length > 0 || findPlaces(name).some(({ form }) => form === 'name');

/** "From 1993 some were made in Czechia, which have a T." */
const bearsLetter =
  /(?<!\p{L})(?:have|has|bear|carry|haben|tragen|hat|ont|portent|hanno|portano|tienen|llevan|hebben|dragen)\s(?:an?|eine?n?|une?|una?|een|the|das|la|el|le|il|de)\s$/iu;

/** "A third workshop, in Malta, used the letter X": the one code and the one name of a sentence that speaks of both. */
function onlyPair(text: string): Pair[] {
  const [written, ...more] = codesIn(text);
  const [name, ...others] = [...text.matchAll(placeNames)].filter(({ 0: one, index }) => index > 0 && !namesMonth(one));
  const callsLetter =
    written !== undefined &&
    (letterWords(text).some(({ end }) => end + 1 === written.index) || bearsLetter.test(text.slice(0, written.index)));
  if (!written || !name || more.length > 0 || others.length > 0 || !callsLetter || !isOfWorkshop(text, name[0]))
    return [];
  const { 0: code, index } = written;
  const [start, end] = [Math.min(index, name.index), Math.max(index + code.length, name.index + name[0].length)];
  return [{ code, at: index, name: name[0], start, end }];
}

export interface InSlots {
  plants: SaidPlant[];
  /** Whether each code of the sentence has its name. */
  whole: boolean;
}

/**
 * Workshops that a sentence tells by what stands where: a code, a town that begins with its letter, and its time, in any
 * order and whatever the small words between. None where one of them has two times.
 */
export function plantsInSlots(sentence: string): InSlots {
  if (sentence.length > longest) return { plants: [], whole: false };
  const { text, periods } = withoutPeriods(sentence);
  const initial = pairsIn(text);
  const pairs = initial.length > 0 ? initial : onlyPair(text);
  const alone = codesIn(text).flatMap(({ index }) => (pairs.some(({ at }) => at === index) ? [] : [index]));
  const told = periods
    .filter(({ form }) => form !== 'year')
    .map((period) => ({ period, pair: pairOf(period, pairs, alone, text) }));
  const timesOf = (pair: Pair) => told.flatMap((one) => (one.pair === pair ? [one.period] : []));
  if (pairs.some((pair) => timesOf(pair).length > 1)) return { plants: [], whole: false };
  const plants = pairs.flatMap((pair, at) => {
    const from = text.indexOf(pair.name, pair.start);
    const until = pair.apart
      ? from + pair.name.length
      : pair.at > from
        ? pair.at - 1
        : Math.min(pairs[at + 1]?.start ?? text.length, from + 90);
    const place = readPlace(text.slice(from, until).replace(/[.;(].{0,90}$/su, ''));
    return place ? [plantBeside(pair.code, place, timesOf(pair), pair.at)] : [];
  });
  return { plants, whole: alone.length === 0 && plants.length === pairs.length };
}
