import { unknownPlace } from '../../place';
import { findPlaces } from '../../text';
import { plainCode } from '../said/code';
import { usedOf } from '../said/period';
import { readPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';
import type { SaidPlant } from './plants';

const inBrackets = /([^,;()]{2,80})\((\p{Lu}{1,3}\d?)\)/gu;
/** What leads to the first of a list: "The workshops were". */
const opensList = tellingFinder('is-of', 'stands-for');

/** "Workshops were Rosenheim (R), Kufstein in Austria (K) and from 1999 Brno (B)": each place before its code. */
export function plantsInBrackets(sentence: string): SaidPlant[] {
  const found = placesInBrackets(sentence);
  // "At Wymondham (W) and Holt (H), both in England".
  const tail = /\)(,[^()]{4,60})$/u.exec(sentence)?.[1] ?? '';
  const [country, ...more] = findPlaces(tail);
  if (found.length < 2 || country?.form !== 'name' || more.length > 0 || country.start > farthestCountry) return found;
  return found.map((plant) =>
    plant.own.place === unknownPlace ? { ...plant, own: { ...plant.own, place: country.place } } : plant,
  );
}
const farthestCountry = 16;

function placesInBrackets(sentence: string): SaidPlant[] {
  return [...sentence.matchAll(inBrackets)].flatMap(({ 1: told, 2: written, index }, at): SaidPlant[] => {
    const lead = at === 0 ? (opensList(told!).at(-1)?.end ?? told!.lastIndexOf(':') + 1) : 0;
    const { text, periods } = withoutPeriods(told!.slice(lead));
    const place = readPlace(text.trim());
    const { backwards, ...used } = usedOf(periods.filter(({ form }) => form !== 'year').slice(0, 1));
    const { code, lookAlike } = plainCode(written!);
    const doubts = [lookAlike && ('look-alike' as const), backwards && ('backwards' as const)];
    return place ? [{ own: { kind: 'plant', code, ...place, ...used }, doubts, at: index + told!.length + 1 }] : [];
  });
}
