import { unknownPlace } from '../../place';
import { foldWords } from '../../text';
import { namesMonth } from '../said/month';
import { usedOf } from '../said/period';
import { readPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';
import type { NamedCode } from './codes-named';

/** "Walsall (BA)": the place before its code. */
const placeBefore = /((?:\p{Lu}[\p{L}'’-]{1,30}[ -]){0,3}\p{Lu}[\p{L}'’-]{1,30})\s?\($/u;
const verbs = tellingFinder('stands-for', 'strong-stands-for');
const plantWords = tellingFinder('plant');
/** "HJ for France", behind a code that a verb explained; in a list of letters, small words may stand before the name. */
const elliptical =
  /^\s?,?\s?(?:(?:celui|celle|ceux|the one|quello|quella|el|la|die|der|das|dat)\s(?:d['’]|d[eiu]s?\s|at\s|in\s|von\s|van\s|te\s))?(?:for|für|fuer|per|para|voor|pour|à|a la|la)?\s?(?:l['’]|l[ea]s?\s|[ei]l\s|lo\s)?(?=\p{Lu})|^\s?は/u;
const inList = /^\s\p{Ll}{1,5}\s(?:in\s)?(?=(?:\p{L}[\p{L}'’-]{0,15}\s){0,4}(?:[ld]['’])?\p{Lu})|^\s?は/u;
/** "SK ein Betrieb in der Slowakei", behind a code that a verb explained. */
const inWords = /^\s(?=\p{Ll})/u;
const madeAt = tellingFinder('made-at');
/** Letters between a letter and the words that say where its pieces were made. */
const farthestMade = 40;
/** How far from a code a verb may stand that says what it is: behind "I was wrong about N:" a pronoun comes first. */
const nearest = 2;
const nearestCorrected = 10;

/** The place before a code in brackets, and the time that follows; `made` is whether the sentence says that pieces are made there. */
export function placeAround(sentence: string, at: number, segment: string, made: boolean) {
  const named = segment.startsWith(')') ? placeBefore.exec(sentence.slice(Math.max(0, at - 80), at)) : null;
  const place = named && readPlace(named[1]!);
  if (!place || (place.place === unknownPlace && !made)) return null;
  const told = withoutPeriods(segment).periods.filter(({ form, start }) => form !== 'year' && start <= 12);
  const { backwards, ...used } = usedOf(told.slice(0, 1));
  return { fields: { ...place, ...used }, backwards };
}

/** "K is Kendal": a letter of the code begins the name, as it does where letters are chosen after towns. */
const isInitial = (code: string, name: string): boolean =>
  foldWords(code).text.includes(foldWords(name.slice(0, 1)).text);

/** Where the name may begin of what a code is, without a verb between them. */
function withoutVerb(segment: string, listed: boolean, follows: boolean): RegExpExecArray | null {
  if (listed) return inList.exec(segment);
  if (!follows) return null;
  const named = elliptical.exec(segment);
  if (named) return named;
  return plantWords(segment).some(({ start }) => start <= 8) ? inWords.exec(segment) : null;
}

const forName = /^\s(?:for|für|pour|per|para|voor)\s(?=\p{Lu}\p{Ll})/u;
/** "I have seen NI for Niort as well": a code of letters that the name begins with. */
function forTown(segment: string, token: NamedCode | null): RegExpExecArray | null {
  const match = forName.exec(segment);
  const isInitial = match !== null && token?.by === 'written' && segment.startsWith(token.code[0]!, match[0].length);
  return isInitial ? match : null;
}

const hanTown = /^(\p{Script=Han}{1,6})(?:[、。（(]|の(?:工場|工房)|を|工場|工房|です|で|$)/u;
/** "MKは京都、": a town in kanji could be any word, but not behind the code of a workshop. */
function inHan(text: string, segment: string, ofPlants: boolean): ReturnType<typeof readPlace> {
  const town = ofPlants && /^\s?[はが]/u.test(segment) ? hanTown.exec(text.trim()) : null;
  return town && readPlace(town[1]!, 'cell');
}

/** The place that the words behind a code say it stands for; null where they say none. */
export function readSegment(
  segment: string,
  token: NamedCode | null,
  corrected: boolean,
  { follows, ofPlants, ofCodes } = { follows: false, ofPlants: false, ofCodes: false },
) {
  // "KV (Belgium)": the bracket alone says it, for countries.
  const bracket = /^\s?\(([^()]{3,60})\)/.exec(segment);
  const inBracket = bracket ? readPlace(withoutPeriods(bracket[1]!).text) : null;
  if (bracket && inBracket && inBracket.place !== unknownPlace) {
    const { backwards, ...used } = usedOf(withoutPeriods(bracket[1]!).periods.slice(0, 1));
    return { fields: { ...inBracket, ...used }, backwards };
  }
  const hits = verbs(segment);
  const listed = token?.by === 'for' || token?.by === 'as';
  const verb = listed ? undefined : hits.find(({ start }) => start <= (corrected ? nearestCorrected : nearest));
  const strong =
    verb !== undefined &&
    (/^\s?[=＝→]/u.test(segment) ||
      hits.some(({ start, value }) => start === verb.start && value === 'strong-stands-for'));
  // "The letter C in front of the code: made at Crewkerne".
  const made = !verb && token?.by === 'strong' ? madeAt(segment).find(({ start }) => start <= farthestMade) : undefined;
  const joined = verb || made ? null : (withoutVerb(segment, listed, follows) ?? forTown(segment, token));
  const from = verb?.end ?? made?.end ?? joined?.[0].length;
  if (from === undefined) return null;
  // "Hは姫路で、1993年からは…": the clause ends there.
  const { text, periods } = withoutPeriods(segment.slice(from).replace(/(?<=\p{Script=Han})で[、。].{0,200}$/su, 'で'));
  const place =
    inHan(text, segment, ofPlants) ??
    readPlace(text.slice(0, 90).replace(/\.\s.{0,90}$|[,\s]\s?(?:\p{Ll}{1,3}\s)?\p{Lu}\s.{0,90}$/su, ''));
  if (!place) return null;
  const initial = token !== null && isInitial(token.code, place.name ?? '');
  if (place.place === unknownPlace) {
    // "TV is Verona" may be anything; "TV stands for Verona" is not, nor is it where workshops are spoken of.
    const saidSo =
      strong || made || corrected || token?.by === 'for' || (joined && !listed) || plantWords(text).length > 0;
    const weak = token?.by === 'weak' || token?.by === 'as';
    if (!saidSo && !(ofPlants && verb && !weak) && !(initial && (ofCodes || listed))) return null;
    // "J is January" is no town.
    if (namesMonth(place.name ?? '')) return null;
  }
  const told = periods.filter(({ form }) => form !== 'year');
  const { backwards, ...used } = usedOf(told.slice(0, 1));
  return { fields: { ...place, ...used }, backwards };
}
