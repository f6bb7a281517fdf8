import type { Reading } from '../code/types';
import { kit, strings } from '../words';

/** One meaning of a code: the characters that carry it in their places, a dot for each other one, and what they say. */
export interface CodeRow {
  key: string;
  characters: string;
  says: string;
}

/** What a buyer looks for first stands first. */
const order = ['year', 'quarter', 'month', 'week', 'day', 'day of year', 'plant', 'serial number'];
const half = / (?:tens|units|letter|\d)$/;
const englishMonths = 'January February March April May June July August September October November December'.split(
  ' ',
);

/** How a code is built, one row a meaning; characters that lie apart and mean one thing stand in one row. */
export function codeRows({ parts, plant }: Reading): CodeRow[] {
  const length = Math.max(0, ...parts.map(({ end }) => end));
  const groups = new Map<string, Reading['parts']>();
  for (const part of parts) {
    const key = part.slot.replace(half, '');
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  const placeOf = (key: string) => (order.includes(key) ? order.indexOf(key) : order.length);
  return [...groups]
    .sort(([a], [b]) => placeOf(a) - placeOf(b))
    .map(([key, own]) => ({
      key,
      characters: Array.from({ length }, (_, at) => characterAt(own, at)).join(''),
      says: meaningOf(key, own, plant),
    }));
}

const characterAt = (parts: Reading['parts'], at: number): string => {
  const part = parts.find(({ start, end }) => start <= at && at < end);
  return part ? (part.text[at - part.start] ?? '·') : '·';
};

/** The number that a part says: "week 31" says 31. */
const numberIn = (says: string) => /\d+/.exec(says)?.[0] ?? says;

function meaningOf(key: string, parts: Reading['parts'], plant: Reading['plant']): string {
  const words = strings.answer.parts;
  const { says = '' } = parts[0] ?? {};
  switch (key) {
    case 'year':
      return words.year(says);
    case 'month':
      return words.month(monthOf(says));
    case 'quarter':
      return words.quarter(numberIn(says));
    case 'week':
      return words.week(numberIn(says));
    case 'day':
      return words.day(numberIn(says));
    case 'day of year':
      return words.dayOfYear(numberIn(says));
    case 'plant':
      return words.workshop(parts.map(({ text }) => text).join(''), plant ? kit.place(plant.place) : '');
    case 'serial number':
      return words.number(numberIn(says));
    case 'fixed characters':
    case 'separator':
      return words.fixed;
    default:
      return key.startsWith('check') ? words.check : words.any;
  }
}

function monthOf(name: string): string {
  const at = englishMonths.indexOf(name);
  return at < 0
    ? name
    : new Date(Date.UTC(2000, at, 1)).toLocaleDateString(kit.locale, { month: 'long', timeZone: 'UTC' });
}
