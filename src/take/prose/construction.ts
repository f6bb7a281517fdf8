import type { Part } from '../../claim/types';
import { type Hit, partWords, phraseFinder, tableWords } from '../../text';
import { andWords } from '../and-words';
import type { OwnFields } from '../propose';
import { blanked } from '../said/blanked';
import { plainMaterial } from '../said/material';
import { begunAt, onePeriod, timeBeside } from '../said/one-period';
import { partsIn } from '../said/part';
import { type SaidPeriod, usedOf } from '../said/period';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';

const verbs = tellingFinder('is-of');
const always = tellingFinder('always');
const places = tellingFinder('bag-place');
const longestMaterial = 60;
const materials = phraseFinder(tableWords('material'));
const links = tellingFinder('beforehand', 'afterwards');
const personal = tellingFinder('bought');
type Own = Extract<OwnFields, { kind: 'construction' }>;
export interface SaidConstruction {
  own: Own;
  backwards: boolean;
}
type Used = Pick<Own, 'used' | 'about'>;

/** What a sentence says that a part was made of in a period: "Until 1995 the lining was dark red cotton". */
export function constructionIn(told: string): SaidConstruction[] {
  const [whole, subject] = quotedSubject.exec(told) ?? [];
  if (subject === undefined) return constructionsIn(told);
  // "Die „Elster“ war bis 1966 mit Atlas gefüttert": of that model.
  const found = constructionsIn(told.replace(whole!, ' '));
  return found.map(({ own, backwards }) => ({ own: { ...own, models: [subject] }, backwards }));
}

const quotedSubject =
  /(?:^|\s)(?:(?:[Dd](?:ie|er|as|e)|[Tt]he|[Ll][aeo]|[EeIi]l|[Hh]et)\s)?[„“"«](\p{Lu}[^”“"»]{1,30})[”“"»](?=\s)/u;

const linedWith = tellingFinder('lined-with');
const beforeLined = /(?<!\p{L})met\s([^,.;]{3,40}?)\s$/iu;
/** "Bags were lined with drill": told as of a lining that "was" of it. */
function withLining(sentence: string): string {
  const [verb] = linedWith(sentence);
  const isOther = ({ value, start, end }: Hit<Part>) =>
    value === 'lining' && verb !== undefined && (end <= verb.start || start >= verb.end);
  if (!verb || partsIn(sentence).some(isOther)) return sentence;
  const [ahead, behind] = [sentence.slice(0, verb.start), sentence.slice(verb.end)];
  const material = beforeLined.exec(ahead);
  const was = `${partWords.lining[0]} was`;
  // In Dutch the verb may close the sentence: "met linnen gevoerd".
  if (material) return `${ahead.slice(0, material.index)}${was} ${material[1]}${behind}`;
  return `${ahead}${was}${behind.replace(/^\smet(?=\s)/u, '')}`;
}

function constructionsIn(told: string): SaidConstruction[] {
  const sentence = withLining(told);
  if (personal(sentence).length > 0) return [];
  const found: SaidConstruction[] = [];
  for (const clause of sentence.split(/;\s?|\.\s(?=\p{Lu})/u)) {
    const { text, periods } = withoutPeriods(clause);
    const [part] = partsIn(text);
    const told = periods.filter(({ form }) => form !== 'year');
    const last = found.at(-1);
    const [link] = links(text);
    if (part && told.length > 0 && (link || told.length > 1)) {
      found.push(...inTurn(clause, text, part, told));
    } else if (last && link && told.length === 0) {
      const next = linked(last.own, link.value);
      const is = next && materialBehind(text, link.end);
      const { used: _, about: __, ...of } = last.own;
      if (is) found.push({ own: { ...of, is, ...next }, backwards: false });
    } else if (part && periods.length === 0 && always(text).length > 0) {
      const is = alwaysOf(text, part);
      if (is) found.push({ own: { kind: 'construction', part: part.value, is }, backwards: false });
    } else if (part && told.length === 1) {
      const is = materialBehind(text, part.end);
      const { backwards, ...used } = usedOf(told);
      if (is) found.push({ own: { kind: 'construction', part: part.value, is, ...used }, backwards });
    }
  }
  return found;
}

/** "The hardware was always brass": of what it was at all times, where that is a material. */
function alwaysOf(text: string, part: Hit<Part>): string | null {
  const behind = text.slice(part.end);
  const [at] = always(behind);
  // "The zip was by then always metal" is of a time.
  const verb = verbs(behind).at(0);
  const between = at ? behind.slice(verb && verb.end <= at.start ? verb.end : 0, at.start) : '';
  const is =
    at && at.start <= 16 && /^[\s,]{0,3}$/.test(between)
      ? material(behind.slice(at.end).split(/[,(:;。]|\.(?:\s|$)/)[0]!)
      : null;
  return is !== null && materials(is).length > 0 ? is : null;
}

const joints = new RegExp(`[,、]|\\s(?:${andWords})\\s`, 'gu');

/** A period or a word such as "afterwards", with its place in the clause. */
interface Marker {
  start: number;
  end: number;
  period?: SaidPeriod;
  link?: 'beforehand' | 'afterwards';
}

/**
 * What a part was in one period and in the next: "of silk until 1985, then of cotton", "gilt until 1990 and plain since
 * 1991". Each piece between commas and "and" tells one material and one time; else nothing is taken.
 */
function inTurn(clause: string, text: string, part: Hit<Part>, periods: readonly SaidPeriod[]): SaidConstruction[] {
  const verb = verbBehind(text, part.end);
  if (!verb) return [];
  const markers: Marker[] = [
    ...periods.map((period) => ({ start: period.start, end: period.end, period })),
    ...links(text).map(({ start, end, value }) => ({ start, end, link: value })),
  ].sort((a, b) => a.start - b.start);
  const ahead = markers.filter(({ end }) => end <= part.start);
  const behind = markers.filter(({ start }) => start >= part.end);
  if (ahead.length + behind.length !== markers.length || ahead.length > 1) return [];
  const cuts = [...clause.slice(verb.end).matchAll(joints)]
    .map(({ index, 0: joint }) => ({ start: verb.end + index, end: verb.end + index + joint.length }))
    .filter((cut) => !behind.some(({ start, end }) => cut.start < end && cut.end > start));
  const found: SaidConstruction[] = [];
  let own = [...ahead];
  let from = verb.end;
  let reached = 0;
  for (const cut of [...cuts, { start: clause.length, end: clause.length }]) {
    while (behind[reached] && behind[reached]!.start < cut.start) own.push(behind[reached++]!);
    if (own.length > 1) return [];
    const [marker] = own;
    const is = marker && materialOf(clause, marker, from, cut.start);
    // A piece without its time, or without a material, goes on behind the comma.
    if (!is) continue;
    const before = found.at(-1)?.own;
    const { backwards, ...used } = marker.period
      ? usedOf([begunAt(marker.period, timeBeside(onePeriod(before?.used), 'afterwards')?.[0])])
      : { backwards: false, ...(before ? linked(before, marker.link!) : opened(marker, behind[reached])) };
    if (!used.used) return [];
    found.push({ own: { kind: 'construction', part: part.value, is, ...used }, backwards });
    own = [];
    from = cut.end;
  }
  return found.length > 1 ? found : [];
}

/** "Chamois to begin with, and from 1975 cotton": what came first ended when the next began. */
function opened({ link }: Marker, next: Marker | undefined): Used | undefined {
  const period = next?.period;
  return link === 'beforehand' && period?.form === 'since' ? linked(usedOf([period]), link) : undefined;
}

/** The words of a piece without its time. */
const materialOf = (clause: string, time: Marker, from: number, to: number): string | null =>
  material(
    blanked(clause, [time])
      .slice(from, to)
      .replace(/です[。\s]{0,3}$/u, ''),
  );

/** "La cremallera del bolsillo interior fue …": where on the piece the part is. */
const ofPlace =
  /^\s(?:of|in|on|at|von|vom|am|an|im|in|de[ls]?|des|du|d['’]|della|dello|nel|nella|van|aan)\s(?:(?:the|der|dem|den|la|el|il|de|het)\s)?(?:\p{Ll}{3,16}\s){0,2}(?:\p{L}{3,20})\s?$/u;

/** What says of a part that it was of a material: a verb right behind it, or a colon ("Linings changed as well: silk …"). */
function verbBehind(text: string, from: number): { start: number; end: number } | undefined {
  const verb = verbs(text).find(
    ({ start }) => start >= from && (start - from <= 10 || ofPlace.test(text.slice(from, start))),
  );
  const colon = /^[^.;:]{0,40}:(?=\s)/u.exec(text.slice(from));
  const end = colon ? from + colon[0].length : 0;
  return (
    verb ?? (colon && materials(text.slice(end, end + longestMaterial)).length > 0 ? { start: from, end } : undefined)
  );
}

function linked({ used, about }: Used, link: 'beforehand' | 'afterwards'): Used | undefined {
  const beside = timeBeside(onePeriod(used), link);
  const [shared, told] = link === 'beforehand' ? (['from', 'to'] as const) : (['to', 'from'] as const);
  return beside && { used: beside, ...(about?.includes(shared) && { about: [told] }) };
}

/** The words behind "was", "était en", "war … aus": what the part was. */
function materialBehind(text: string, from: number): string | null {
  const verb = verbBehind(text, from);
  return verb ? material(text.slice(verb.end).split(/[,(:。]|\.(?:\s|$)|\s[–—]\s/)[0]!) : null;
}

function material(text: string): string | null {
  const is = plainMaterial(text)
    .replace(/\s{2,80}/g, ' ')
    .trim();
  const long = is.length >= 3 || /^\p{Script=Han}{1,2}$/u.test(is);
  // "On the inside of the flap" is a place.
  if (places(is).length > 0 && materials(is).length === 0) return null;
  return long && is.length <= longestMaterial && !/\d/.test(is) ? is : null;
}
