import { unknownPlace } from '../../place';
import { foldWords } from '../../text';
import type { OwnFields } from '../propose';
import { doubtedBy } from '../said/doubted';
import { namesMonth } from '../said/month';
import { readPeriods, usedOf } from '../said/period';
import { readPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import type { Doubt } from '../types';
import { tellingFinder } from '../words';
import { codesNamed, type NamedCode } from './codes-named';
import { placesInBracketsBehind, plantsInBrackets } from './plants-in-brackets';

export interface SaidPlant {
  own: Extract<OwnFields, { kind: 'plant' }>;
  doubts: (Doubt | false)[];
  /** Place of the code in the sentence. */
  at: number;
  /** Whether it sets another's statement right, who may agree. */
  corrects?: boolean;
}

/** What is known before a sentence is read. */
export interface Before {
  /** Whether the page writes codes of one letter. */
  oneLetter: boolean;
  /** Whether the writer has just said to have been wrong. */
  confessed: boolean;
  /** The code that the sentence before took back without saying what it is instead. */
  takenBack: string | null;
}

/** "Walsall (BA)": the place before its code. */
const placeBefore = /((?:\p{Lu}[\p{L}'’-]{1,30}[ -]){0,3}\p{Lu}[\p{L}'’-]{1,30})\s?\($/u;
const verbs = tellingFinder('stands-for', 'strong-stands-for');
const plantWords = tellingFinder('plant');
const letterWords = tellingFinder('letters');
const produced = tellingFinder('produced');
const withdrawn = tellingFinder('withdrawn', 'mistaken');
/** "I got H wrong": right behind the code. */
const wrongBehind = tellingFinder('wrong-behind');
const denied = tellingFinder('is-not');
const instead = tellingFinder('but-this');
const deniedPlace = /^[^.;]{2,44}$/u;
/** "HJ for France", behind a code that a verb explained; in a list of letters, small words may stand before the name. */
const elliptical =
  /^\s?,?\s?(?:(?:celui|celle|ceux|the one|quello|quella|el|la|die|der|das|dat)\s(?:d['’]|d[eiu]s?\s|at\s|in\s|von\s|van\s|te\s))?(?:for|für|fuer|per|para|voor|pour|à|a la|la)?\s?(?:l['’]|l[ea]s?\s|[ei]l\s|lo\s)?(?=\p{Lu})|^\s?は/u;
const inList = /^\s\p{Ll}{1,5}\s(?:in\s)?(?=(?:\p{L}[\p{L}'’-]{0,15}\s){0,4}(?:[ld]['’])?\p{Lu})|^\s?は/u;
/** "SK ein Betrieb in der Slowakei", behind a code that a verb explained. */
const inWords = /^\s(?=\p{Ll})/u;
/** What is said of a code ends with the clause, and where another letter's turn comes: "R for Romans, P at Poitiers". */
const nextLetter = /[;。].{0,200}$|,\s(?:\p{Ll}{1,3}\s)?\p{Lu}\s\p{L}.{0,200}$/su;
const longest = 120;
const madeAt = tellingFinder('made-at');
/** Letters between a letter and the words that say where its pieces were made. */
const farthestMade = 40;
/** How far from a code a verb may stand that says what it is: behind "I was wrong about N:" a pronoun comes first. */
const nearest = 2;
const nearestCorrected = 10;

/** What a sentence says of plants' codes, and the codes of which it takes an earlier statement back. */
export function plantsIn(sentence: string, before: Before): { plants: SaidPlant[]; retracted: string[] } {
  const ofPlants = plantWords(sentence).length > 0;
  const ofLetters = ofPlants || letterWords(sentence).length > 0;
  const listed = ofLetters ? placesInBracketsBehind(sentence) : [];
  if (listed.length > 1) return { plants: listed, retracted: [] };
  const bracketed = ofPlants ? plantsInBrackets(sentence) : [];
  if (bracketed.length > 1) return { plants: bracketed, retracted: [] };
  const named = codesNamed(sentence, before.oneLetter);
  const plants: SaidPlant[] = [];
  const retracted: string[] = [];
  if (named.length === 0) {
    const meant = before.takenBack === null ? null : readSegment(sentence, null, true);
    if (meant) plants.push({ own: { kind: 'plant', code: before.takenBack!, ...meant.fields }, doubts: [], at: 0 });
    return { plants, retracted };
  }
  const made = ofPlants || produced(sentence).length > 0 || madeAt(sentence).length > 0;
  const taken = withdrawn(sentence);
  const disputed = doubtedBy(sentence).includes('disputed');
  // "Nは奈良、Hは姫路を示します": several in one sentence are a list of workshops.
  const listsInHan = named.length > 1 && closesList.test(sentence);
  const leads = named.map(({ start }, index) => timeAhead(sentence, named[index - 1]?.end, start));
  for (const [index, token] of named.entries()) {
    const { code, start, end } = token;
    const next = leads[index + 1]?.start ?? named[index + 1]?.start ?? sentence.length;
    const segment = withoutRelative(sentence.slice(end, Math.min(next, end + longest)).replace(nextLetter, ''));
    // "I was wrong about BC": what was said before is taken back, not what follows.
    const back =
      taken.find((hit) => hit.end <= start && start - hit.end <= 16) ??
      wrongBehind(segment.slice(0, 24)).find((hit) => hit.start <= 1);
    if (back) retracted.push(code);
    const other = insteadIn(segment);
    if (other) {
      if (other.takesBack) retracted.push(code);
      const place = readPlace(other.text);
      const doubt = other.takesBack && !before.confessed && !back && 'disputed';
      if (place)
        plants.push({ own: { kind: 'plant', code, ...place }, doubts: [doubt], at: start, corrects: doubt !== false });
      continue;
    }
    const follows = plants.length > 0 && plants.at(-1)!.at === named[index - 1]?.start;
    const plant =
      placeAround(sentence, start, segment, made) ??
      readSegment(segment, token, Boolean(back), {
        follows,
        ofPlants: ofPlants || listsInHan,
        oneLetter: before.oneLetter,
      });
    if (!plant) continue;
    const lead = plant.fields.used ? null : leads[index];
    const untrue = taken.some((hit) => hit !== back && hit.start > end);
    plants.push({
      own: { kind: 'plant', code, ...plant.fields, ...lead?.used },
      doubts: [
        (lead?.backwards ?? false) && 'backwards',
        token.lookAlike && 'look-alike',
        untrue && 'withdrawn',
        disputed && 'disputed',
        plant.backwards && 'backwards',
      ],
      at: start,
    });
  }
  const dated = named.length === 1 ? plants.map((plant) => withTimeBefore(plant, sentence)) : plants;
  return { plants: withoutBareNames(dated, ofPlants), retracted };
}

const joint = /(?:[,;]|\s(?:and|und|et|ed?|y|en))\s?(?:(?:and|und|et|ed?|y|en)(?!\p{L}))?[\s,]{0,3}$/u;
/** "SC for Scarborough and, from 1985, MA for Malta": a time between two codes that is of the second. */
function timeAhead(sentence: string, from: number | undefined, to: number) {
  if (from === undefined || to - from > longest) return null;
  const gap = sentence.slice(from, to);
  const period = readPeriods(gap).at(-1);
  if (!period || period.form === 'year' || !/^\s?,?\s?$/u.test(gap.slice(period.end))) return null;
  const before = joint.exec(gap.slice(0, period.start));
  if (!before) return null;
  const { backwards, ...used } = usedOf([period]);
  return { start: from + before.index, used, backwards };
}

/** "Since 2001 there is RO as well, which is Romania": the time that opens the clause of the only code. */
function withTimeBefore(plant: SaidPlant, sentence: string): SaidPlant {
  if (plant.own.used) return plant;
  const ahead = sentence.slice(0, plant.at);
  const [period, ...more] = readPeriods(ahead);
  if (!period || more.length > 0 || period.form === 'year' || readPeriods(sentence).length > 1) return plant;
  const between = ahead.slice(period.end).replace(/^\s?,/, '');
  if (period.start > 3 || between.length > farthestTime || /[,;:.。、]/.test(between)) return plant;
  const { backwards, ...used } = usedOf([period]);
  return { ...plant, own: { ...plant.own, ...used }, doubts: [...plant.doubts, backwards && 'backwards'] };
}
const farthestTime = 48;

const relative = tellingFinder('which-is');
/** "RO, which is Romania": a pronoun, or "that is", between a code and what it is. */
function withoutRelative(segment: string): string {
  if (!/^\s?,\s/.test(segment)) return segment;
  const pronoun = relative(segment).find(({ start }) => start <= 2);
  if (!pronoun) return segment;
  // "K, which occurs from 1974, means Finland".
  const clause = /^[^,.;]{4,60},(?=\s)/u.exec(segment.slice(pronoun.end))?.[0];
  const rest = clause === undefined ? '' : segment.slice(pronoun.end + clause.length);
  const goesOn = clause !== undefined && verbs(rest).some(({ start }) => start <= 2);
  return goesOn ? `${rest.replace(/[.;].{0,200}$/su, '')}, ${clause.slice(0, -1)}` : segment.slice(pronoun.end);
}

/** A name in katakana may be any thing: beside a country, or where workshops are spoken of, it is a town. */
function withoutBareNames(plants: readonly SaidPlant[], ofPlants: boolean): SaidPlant[] {
  const listed = ofPlants || plants.some(({ own }) => own.place !== unknownPlace);
  return plants.filter(
    ({ own }) => listed || own.place !== unknownPlace || !/^\p{Script=Katakana}/u.test(own.name ?? ''),
  );
}

/**
 * "AB is not Aubagne but Abbeville": what the place is instead; the sentence takes the other one back. "AB is not Aubagne,
 * it is Abbeville" says against another what it is, and leaves both standing.
 */
function insteadIn(segment: string): { text: string; takesBack: boolean } | null {
  const not = denied(segment).find(({ start }) => start <= 1);
  if (!not) return null;
  const but = instead(segment).find(({ start }) => deniedPlace.test(segment.slice(not.end, start)));
  const comma = but ? null : /^[^.;,]{2,44},\s/u.exec(segment.slice(not.end));
  const from = comma ? not.end + comma[0].length : null;
  const is = from === null ? undefined : verbs(segment).find(({ start }) => start >= from && start - from <= 8);
  const rest = but ? segment.slice(but.end) : is ? segment.slice(is.end) : '';
  if (!/^\s?\p{L}/u.test(rest)) return null;
  const { text } = withoutPeriods(rest);
  return { text: text.slice(0, 90).replace(/[.,;].{0,90}$/su, ''), takesBack: Boolean(but) };
}

function placeAround(sentence: string, at: number, segment: string, made: boolean) {
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

const closesList = /(?:を(?:示|表|指)|の(?:工場|工房)|です)/u;
const hanTown = /^(\p{Script=Han}{1,6})(?:[、。]|の(?:工場|工房)|を|工場|工房|です|で|$)/u;
/** "MKは京都、": a town in kanji could be any word, but not behind the code of a workshop. */
function inHan(text: string, segment: string, ofPlants: boolean): ReturnType<typeof readPlace> {
  const town = ofPlants && /^\s?は/u.test(segment) ? hanTown.exec(text.trim()) : null;
  return town && readPlace(town[1]!, 'cell');
}

function readSegment(
  segment: string,
  token: NamedCode | null,
  corrected: boolean,
  { follows, ofPlants, oneLetter } = { follows: false, ofPlants: false, oneLetter: false },
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
  const { text, periods } = withoutPeriods(segment.slice(from));
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
    if (!saidSo && !(ofPlants && verb && !weak) && !(initial && (oneLetter || listed))) return null;
    // "J is January" is no town.
    if (namesMonth(place.name ?? '')) return null;
  }
  const told = periods.filter(({ form }) => form !== 'year');
  const { backwards, ...used } = usedOf(told.slice(0, 1));
  return { fields: { ...place, ...used }, backwards };
}
