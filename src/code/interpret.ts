import { meetSpans, periodSpan, reachOfAbout, type Span, spansMeet, yearSpan } from '../span';
import type { BookPlant, BookSystem } from './book';
import type { Expected } from './expected';
import type { LaidLayout } from './layout';
import { leftOut, wrongCheck } from './search';
import { kindOfGroup } from './slot';
import type { GroupName } from './slot/cell';
import type { PlaceOfCode } from './tells';
import { yearsMeant } from './year';

/** What a filled layout says once: a date (null when it says none) and a plant. */
export interface Meaning {
  span: Span | null;
  year: number | null;
  plant: BookPlant | null;
  /** The date lies in the system's own period, or the code has no date. */
  inPeriod: boolean;
  /** The date lies after the code was seen. */
  inFuture: boolean;
  /** The plant worked at that date, or the code names no plant or no date. */
  plantInUse: boolean;
}

/** A value that a code of this shape cannot hold. */
export interface Impossible {
  slot: PlaceOfCode;
  value: string;
  expected: Expected;
}

export const slotText = (laid: LaidLayout, slot: number, path: string): string => {
  const { first, end } = laid.slots[slot]!;
  return path.slice(first, end).replaceAll(leftOut, '');
};

/** A group's value in reading order ("09" for a month whose units stand before its tens). */
export function groupValue(laid: LaidLayout, name: GroupName, path: string): string | null {
  const group = laid.groups.get(name);
  if (!group) return null;
  const value: string[] = [];
  for (const cell of group.cells) value[laid.cells[cell]!.place] = path[cell]!;
  return value.join('');
}

/** The number that a group's value stands for: the value itself, or its place in the list of letters (from 1). */
function groupNumber(laid: LaidLayout, name: GroupName, path: string): number | null {
  const value = groupValue(laid, name, path);
  if (value === null) return null;
  const { writes, values } = laid.groups.get(name)!;
  return /^\d digits/.test(writes) ? Number(value) : (values?.indexOf(value) ?? -1) + 1;
}

/** A group as a place of the code. */
const slotName = (name: GroupName): PlaceOfCode => (name === 'dayOfYear' ? 'day of year' : name);

/** Every meaning of a filled layout, or the first value in it that cannot be. */
export function interpret(
  system: BookSystem,
  laid: LaidLayout,
  path: string,
  latestYear?: number,
): Meaning[] | Impossible {
  for (const group of laid.groups.values()) {
    const value = groupValue(laid, group.name, path)!;
    if (group.values && !group.values.includes(value)) {
      return { slot: slotName(group.name), value, expected: group.expected };
    }
  }
  for (const check of laid.checks) {
    const wrong = wrongCheck(check, path, laid);
    if (wrong) return { slot: 'check', value: wrong.is, expected: { kind: 'check', fits: wrong.fits } };
  }
  const dates = datesOf(system, laid, path, latestYear);
  if ('expected' in dates) return dates;
  const timed = timeBySerial(laid, path, dates);
  if ('expected' in timed) return timed;
  return timed.flatMap((date) => placeMeanings(system, laid, path, date, latestYear));
}

const anyDate: Span | null = { from: null, to: null, precision: 'range' };

interface DateRead {
  span: Span | null;
  year: number | null;
}

/** Dates from the year, month, week, quarter and day slots, one for each year that can be meant. */
function datesOf(system: BookSystem, laid: LaidLayout, path: string, latestYear?: number): DateRead[] | Impossible {
  const group = laid.groups.get('year');
  if (!group) return [{ span: null, year: null }];
  const years = yearsMeant(group, groupValue(laid, 'year', path)!, system.used, latestYear);
  const numbers = new Map([...laid.groups.keys()].map((name) => [name, groupNumber(laid, name, path)]));
  const other = { month: numbers.get('month') ?? null };
  const parts = (year: number): (Span | null)[] => {
    if (year < 1 || year > 9999) return [null];
    const found = [...laid.groups.values()].flatMap((part) => {
      const span = kindOfGroup(part.name).dates?.(numbers.get(part.name)!, year, part, other);
      return span === undefined ? [] : [span];
    });
    return found.length > 0 ? found : [yearSpan(year)];
  };
  const dates = years.flatMap((year) => {
    const span = parts(year).reduce((met, part) => (met && part ? meetSpans(met, part) : null), anyDate);
    return span ? [{ span, year }] : [];
  });
  if (dates.length > 0) return dates;
  const blame = (name: GroupName) => kindOfGroup(name).blamed ?? Number.POSITIVE_INFINITY;
  const slot = [...laid.groups.keys()].reduce((first, name) => (blame(name) < blame(first) ? name : first));
  return { slot: slotName(slot), value: groupValue(laid, slot, path)!, expected: { kind: 'in-year', years } };
}

/** Narrows dates by the tables of serial numbers; a number in a gap of the table is impossible. */
function timeBySerial(laid: LaidLayout, path: string, dates: DateRead[]): DateRead[] | Impossible {
  let timed = dates;
  for (const [index, { slot }] of laid.slots.entries()) {
    if (!('serial' in slot) || !slot.table) continue;
    const written = slotText(laid, index, path);
    const number = Number(slot.reversed ? [...written].reverse().join('') : written);
    const rows = slot.table.filter(({ first, last }) => number >= first && (last === null || number <= last));
    const made = rows.flatMap((row) => periodSpan(row.made) ?? []).map(reachOfAbout);
    if (made.length === 0) return { slot: 'serial', value: written, expected: { kind: 'in-table' } };
    const met = timed.flatMap(({ span, year }) =>
      made.flatMap((row) => {
        const both = span ? meetSpans(span, row) : row;
        return both ? [{ span: both, year }] : [];
      }),
    );
    if (met.length === 0) {
      return { slot: 'serial', value: written, expected: { kind: 'own-date', number: written, made } };
    }
    timed = met;
  }
  return timed;
}

function placeMeanings(
  system: BookSystem,
  laid: LaidLayout,
  path: string,
  { span, year }: DateRead,
  latestYear = 9999,
): Meaning[] {
  const inFuture = Number(span?.from?.slice(0, 4) ?? 0) > latestYear;
  const inPeriod = span === null || (spansMeet(span, reachOfAbout(system.used)) && !inFuture);
  const code = groupValue(laid, 'plant', path);
  const plants = code === null ? [] : (system.plants.get(code) ?? []);
  if (plants.length === 0) return [{ span, year, plant: null, inPeriod, inFuture, plantInUse: true }];
  const working = plants.filter(
    ({ used }) => span === null || used.some((period) => spansMeet(reachOfAbout(period), span)),
  );
  const plantInUse = working.length > 0;
  return (plantInUse ? working : plants).map((plant) => ({ span, year, plant, inPeriod, inFuture, plantInUse }));
}
