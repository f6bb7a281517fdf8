import type { PartTells } from '../code';
import type { Reading } from '../code/types';
import { kit, strings } from '../words';

/** One meaning of a code: the characters that carry it in their places, a dot for each other one, and what they say. */
export interface CodeRow {
  key: PartTells['kind'];
  characters: string;
  says: string;
}

/** What a buyer looks for first stands first. */
const order: PartTells['kind'][] = [
  'year',
  'quarter',
  'month',
  'week',
  'day',
  'day-of-year',
  'plant',
  'serial',
  'check',
  'any',
  'fixed',
];

/** How a code is built, one row a meaning; characters that lie apart and mean one thing stand in one row. */
export function codeRows({ parts, plant }: Reading): CodeRow[] {
  const length = Math.max(0, ...parts.map(({ end }) => end));
  return order.flatMap((key) => {
    const own = parts.filter(({ tells }) => tells.kind === key);
    const [first] = own;
    if (!first) return [];
    const characters = Array.from({ length }, (_, at) => characterAt(own, at)).join('');
    return [{ key, characters, says: meaningOf(first.tells, own, plant) }];
  });
}

const characterAt = (parts: Reading['parts'], at: number): string => {
  const part = parts.find(({ start, end }) => start <= at && at < end);
  return part ? (part.text[at - part.start] ?? '·') : '·';
};

function meaningOf(tells: PartTells, parts: Reading['parts'], plant: Reading['plant']): string {
  const words = strings.answer.parts;
  switch (tells.kind) {
    case 'year':
      return words.year(String(tells.year));
    case 'month':
      return words.month(kit.month(tells.month));
    case 'quarter':
      return words.quarter(String(tells.number));
    case 'week':
      return words.week(String(tells.number));
    case 'day':
      return words.day(String(tells.number));
    case 'day-of-year':
      return words.dayOfYear(String(tells.number));
    case 'serial':
      return words.number(String(tells.number));
    case 'plant':
      return words.workshop(parts.map(({ text }) => text).join(''), plant ? kit.place(plant.place) : '');
    default:
      return words[tells.kind];
  }
}
