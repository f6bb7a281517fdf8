import { unknownPlace } from '../../place';
import { findPlaces } from '../../text';
import { andWords } from '../and-words';
import { namesMonth } from '../said/month';
import { readPeriods, type SaidPeriod } from '../said/period';
import { readPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';
import { plantBeside, type SaidPlant } from './said-plant';

const inBrackets =
  /\((?:\p{Ll}{0,12}(?:letter|lettre|lettera|letra|buchstabe|kürzel|marke|sigla|code|codice|código)\s)?(\p{Lu}{1,3}\d?)(?:,\s([^()]{4,24}))?\)/gu;
/** "Workshops were Rosenheim (R), Kufstein in Austria (K) and from 1999 Brno (B)": each place before its code. */
export function plantsInBrackets(sentence: string): SaidPlant[] {
  const found = placesInBrackets(sentence);
  // "At Wymondham (W) and Holt (H), both in England".
  const tail = /\)(,[^()]{4,60})$/u.exec(sentence)?.[1] ?? '';
  const [country, ...more] = findPlaces(tail);
  if (found.length < 2 || country?.form !== 'name' || more.length > 0 || country.start > farthestCountry) return found;
  const isOfAll = bothOf(tail).length > 0;
  return found.map((plant, at) =>
    plant.own.place === unknownPlace && (isOfAll || at === found.length - 1)
      ? { ...plant, own: { ...plant.own, place: country.place } }
      : plant,
  );
}
const farthestCountry = 16;
const bothOf = tellingFinder('both-of');

/** A name right before a bracket, with its country. */
const nameBefore =
  /\p{Lu}[\p{L}'’-]{1,30}(?:[ -](?:(?:de|la|del|di|sur|am|an|der|in|en|upon)[ -]){0,2}\p{Lu}[\p{L}'’-]{1,30}){0,3}(?:,\s\p{Lu}[\p{L}'’-]{1,30})?\s?$/u;
const joint = new RegExp(`^[\\s,;]{0,4}(?:(?:${andWords})(?!\\p{L}))?[\\s,]{0,4}`, 'u');

/** "Beside Drachten (D)": the first word of a sentence has its capital from there; the name begins as its code does. */
function fromInitial(name: string, code: string): string {
  const words = name.split(' ');
  const first = words.findIndex((word) => word.startsWith(code[0]!));
  return first > 0 ? words.slice(first).join(' ') : name;
}

const endsOf = new RegExp(`^\\s?[,;](?:\\s|$)|^\\s(?:${andWords})\\s|^[\\s.]{0,3}$`, 'u');
/** "Oyonnax (O), opened in 1970, and Gex (G)": whether a time is parted from the place behind it, and so of the bracket before. */
function isBehind(between: string, { form, start, end }: SaidPeriod, more: boolean): boolean {
  const opens = /^,?\s(?:\p{Ll}{2,12}\s){0,2}$/u.test(between.slice(0, start)) && !startsWithAnd.test(between);
  return form !== 'year' && opens && (!more || endsOf.test(between.slice(end)));
}
const startsWithAnd = new RegExp(`^[\\s,]{1,3}(?:${andWords})\\s`, 'u');
const timesBehind = (between: string, more: boolean): SaidPeriod[] =>
  readPeriods(between)
    .filter((period) => isBehind(between, period, more))
    .slice(0, 1);

function placesInBrackets(sentence: string): SaidPlant[] {
  let reached = 0;
  const all = [...sentence.matchAll(inBrackets)];
  return all.flatMap(({ 0: bracket, 1: written, 2: time, index }, at): SaidPlant[] => {
    const told = sentence.slice(Math.max(reached, index - longest), index);
    reached = index + bracket.length;
    const { text, periods } = withoutPeriods(told);
    // What leads to the first of them is no part of its name.
    const name = at === 0 ? nameBefore.exec(text)?.[0] : text.replace(joint, '');
    const plain = name?.replace(/^[\s,]{1,80}/, '').trim();
    const own = plain !== undefined && told.startsWith(plain) && at === 0 ? fromInitial(plain, written!) : plain;
    const place = own === undefined ? null : readPlace(own);
    const next = all[at + 1]?.index ?? sentence.length;
    const behind = timesBehind(sentence.slice(reached, next), at + 1 < all.length);
    const near = periods.filter(
      (period) => (at > 0 || text.length - period.end <= nearest) && !(at > 0 && isBehind(told, period, true)),
    );
    // "Tielt (T, from 1978)"; another word behind the code is of something else.
    const inside = time === undefined ? [] : readPeriods(time);
    if (time !== undefined && inside.length !== 1) return [];
    const times = [inside, behind].find((one) => one.length > 0) ?? near;
    return place ? [plantBeside(written!, place, times, index + 1)] : [];
  });
}
const longest = 90;
const nearest = 44;

const behindCode = /(?<![\p{L}\d])(\p{Lu}{1,3}\d?)\s?\(([^()]{3,60})\)/gu;

/** "The letters are A (Assen), M (Meppel) and, from 1986, P (Poland)": each place in brackets behind its code. None where a bracket tells anything else. */
export function placesInBracketsBehind(sentence: string): SaidPlant[] {
  let reached = 0;
  const found = [...sentence.matchAll(behindCode)].map(({ 0: all, 1: written, 2: told, index }): SaidPlant | null => {
    const lead = reached === 0 ? '' : sentence.slice(reached, index);
    reached = index + all.length;
    const inside = withoutPeriods(told!);
    const place = readPlace(inside.text.replace(/[\s,]{1,80}$/, ''));
    const periods = inside.periods.length > 0 ? inside.periods : readPeriods(lead);
    if (!place || namesMonth(place.name ?? '') || lead.length > nearest) return null;
    return plantBeside(written!, place, periods, index);
  });
  return found.every((one) => one !== null) ? found : [];
}
