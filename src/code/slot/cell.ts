import type { Expected } from '../expected';
/** What several slots of one layout say together: tens and units of a month are one value, wherever they stand. */
export type GroupName = 'plant' | 'year' | 'month' | 'week' | 'quarter' | 'day' | 'dayOfYear';

export const digits = '0123456789';
export const capitals = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * One place of a code. `tight` are the characters a valid code can have there, `wide` those that keep the code's
 * shape. `place` is where the character belongs in its group's value ("0" and "9" of month "09").
 */
export interface Cell {
  tight: string;
  wide: string;
  group: GroupName | null;
  place: number;
  /** This cell and the rest of its slot can be left out. */
  optional: boolean;
  /** It is left out alone, as a bracket round a letter is, and not with the rest of its slot. */
  alone?: true;
}

/** A group's values as strings in reading order; null when any value of the shape is possible (years). */
export interface GroupShape {
  name: GroupName;
  /** How the slot writes the value; slots of one group have to agree. */
  writes: string;
  /** How many characters the whole value has. */
  width: number;
  values: readonly string[] | null;
  /** What a value has to be. */
  expected: Expected;
}

export interface SlotShape {
  /** The slot in plain words: "month tens". */
  name: string;
  cells: Cell[];
  group?: GroupShape;
}

/** Plants of the maker, by which plant slots are filled; empty when none is known. */
export interface SlotContext {
  plantCodes: readonly string[];
}

export const numbersFrom = (first: number, last: number, width: number): string[] =>
  Array.from({ length: last - first + 1 }, (_, step) => String(first + step).padStart(width, '0'));

/** The smallest usual class of characters that holds all given: digits, letters, or both. */
export function classOf(characters: string): string {
  const hasDigit = /[0-9]/.test(characters);
  const hasLetter = /[A-Z]/.test(characters);
  return hasDigit && hasLetter ? capitals + digits : hasDigit ? digits : capitals;
}

const uniqueAt = (values: readonly string[], place: number) =>
  [...new Set(values.map((value) => value[place] ?? ''))].join('');

/** Cells for the places `from` to `to` (exclusive) of a value in a closed list. */
export function listCells(values: readonly string[], group: GroupName, from: number, to: number): Cell[] {
  return Array.from({ length: to - from }, (_, step) => {
    const tight = uniqueAt(values, from + step);
    return { tight, wide: classOf(tight), group, place: from + step, optional: false };
  });
}

/** A value written as one character of a list: the months' letters, the quarters' digits. */
export function listedShape(name: 'month' | 'quarter', listed: string): SlotShape {
  const values = [...listed];
  return {
    name,
    cells: listCells(values, name, 0, 1),
    group: { name, writes: listed, width: 1, values, expected: { kind: 'one-of', slot: name, of: listed } },
  };
}

/** The cells of a two-digit number that may be split into tens and units, and may stand reversed. */
export function twoDigitCells(
  part: 2 | 'tens' | 'units',
  values: readonly string[],
  group: GroupName,
  reversed: boolean | undefined,
): Cell[] {
  const cells = listCells(values, group, part === 'units' ? 1 : 0, part === 'tens' ? 1 : 2);
  return reversed ? cells.reverse() : cells;
}

export const partName = (name: string, part: 2 | 'tens' | 'units'): string => (part === 2 ? name : `${name} ${part}`);
