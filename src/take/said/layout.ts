import { testSystem } from '../../code';
import type { CodeSystem, Layout, Slot } from '../../maker/types';
import { unknownPlace } from '../../place';
import { foldWords } from '../../text';
import { tellingFinder } from '../words';
import { asFolded } from './as-folded';

/** A code as runs: letters, digits, and what stands between. */
export const shapeOf = (code: string): { letters: boolean; text: string }[] =>
  [...code.matchAll(/\p{Lu}{1,9}|\d{1,12}/gu)].map(([text]) => ({ letters: /\p{Lu}/u.test(text), text }));

export const blank: Slot = { separator: ' -', optional: true };

const dateUnits = ['year', 'month', 'week', 'day', 'quarter'] as const;
export type DateUnit = (typeof dateUnits)[number];
export const isDateUnit = (unit: string): unit is DateUnit => (dateUnits as readonly string[]).includes(unit);

/** How so many digits write a unit; null when they cannot. */
export function slotOf(unit: DateUnit, digits: number): Slot | null {
  if (unit === 'quarter') return digits === 1 ? { quarter: 1 } : null;
  if (unit === 'year') return digits === 1 || digits === 2 || digits === 4 ? { year: digits } : null;
  if (digits === 1) return unit === 'month' ? { month: '1-9' } : null;
  return digits === 2 ? ({ [unit]: 2 } as unknown as Slot) : null;
}

/** Digits that units usually take, likeliest first: the year four or one, the month one. */
const widths: readonly Partial<Record<DateUnit, number>>[] = [{}, { month: 1 }, { year: 4 }, { year: 1 }];

/** All ways in which so many digits write these units in this order, likeliest first. */
export const digitWays = (units: readonly DateUnit[], digits: number): Slot[][] =>
  widths.flatMap((unusual) => {
    // A month of one digit stands beside its year, in a code of three.
    if (unusual.month && !(units.length === 2 && units.includes('year'))) return [];
    const own = units.map((unit) => unusual[unit] ?? (unit === 'quarter' ? 1 : 2));
    if (own.reduce((sum, width) => sum + width, 0) !== digits) return [];
    const slots = units.map((unit, at) => slotOf(unit, own[at]!));
    return slots.every((slot): slot is Slot => slot !== null) ? [slots] : [];
  });

/** How so many digits write these units in this order; null when they cannot. A year of one digit beside others is for examples to show. */
export function digitSlots(units: readonly DateUnit[], digits: number): Slot[] | null {
  const [likeliest] = digitWays(units, digits);
  const short = likeliest?.some((slot) => 'year' in slot && slot.year === 1);
  return likeliest && !(short && units.length > 1) ? likeliest : null;
}

/** Four digits whose first and third write one unit, second and fourth the other. */
export const interleaved = (first: DateUnit, second: DateUnit): Slot[] =>
  [
    [first, 'tens'],
    [second, 'tens'],
    [first, 'units'],
    [second, 'units'],
  ].map(([unit, half]) => ({ [unit!]: half }) as unknown as Slot);

/** A notation such as "YYMM LL", each letter a place of the code; null when a letter has no meaning. */
export function readNotation(text: string, legend: ReadonlyMap<string, string>): Layout | null {
  const plain = text.normalize('NFKC').trim();
  if (!/^[A-Z]{1,12}(?:[ ./-]?[A-Z0-9]{1,12}){0,5}$/.test(plain) || plain.length < 2) return null;
  // "AA" is a year in the Romance languages, but not beside another letter that is.
  const ofYear = /[YJ]/.test(plain) ? undefined : 'year';
  const means = (letter: string) => legend.get(letter) ?? (letter === 'A' ? ofYear : usual[letter]);
  const marks = [...plain].map((letter) => (/[ ./-]/.test(letter) ? ' ' : means(letter)));
  if (marks.some((unit) => unit === undefined)) return null;
  const runs: { unit: string; length: number }[] = [];
  for (const unit of marks as string[]) {
    const last = runs.at(-1);
    if (last?.unit === unit) last.length += 1;
    else runs.push({ unit, length: 1 });
  }
  const total = (unit: string) => marks.filter((one) => one === unit).length;
  const seen = new Map<string, number>();
  const slots = runs.map(({ unit, length }): Slot | null => {
    if (unit === ' ') return blank;
    if (unit === 'plant') return { plant: length };
    if (unit === 'serial') return { serial: length };
    const before = seen.get(unit) ?? 0;
    seen.set(unit, before + 1);
    if (length === 1 && total(unit) === 2) return { [unit]: before === 0 ? 'tens' : 'units' } as unknown as Slot;
    if (unit === 'year') return length === 1 || length === 2 || length === 4 ? { year: length } : null;
    if (unit === 'month' && length === 1) return { month: '1-9' };
    if (unit === 'quarter') return length === 1 ? { quarter: 1 } : null;
    return length === 2 ? ({ [unit]: 2 } as unknown as Slot) : null;
  });
  return slots.every((slot): slot is Slot => slot !== null) && marks.some((unit) => unit === 'year') ? slots : null;
}

/** What letters usually stand for where a page does not say: years and months by their first letter. Common practice, no source. */
const usual: Record<string, string | undefined> = {
  Y: 'year',
  J: 'year',
  M: 'month',
  W: 'week',
  S: 'week',
  Q: 'quarter',
  L: 'plant',
  X: 'plant',
};

const units = tellingFinder('year', 'month', 'week', 'day', 'quarter', 'plant', 'serial');

/** What a page says that single capitals stand for: "Y is a digit of the year". */
export function readLegend(text: string): Map<string, string> {
  const folded = foldWords(text).text;
  const legend = new Map<string, string>();
  const unitOf = (said: string) => units(asFolded(said))[0]?.value;
  for (const match of text.matchAll(/(?<![\p{L}\d])([A-Z])(?![\p{L}\d])[^,;.A-Z]{1,60}/gu)) {
    const unit = unitOf(folded.slice(match.index + 1, match.index + match[0].length));
    if (unit && !legend.has(match[1]!)) legend.set(match[1]!, unit);
  }
  return legend;
}

/** Characters that a slot takes in a code. */
const widthOf = (slot: Slot): number => {
  if ('separator' in slot) return 0;
  if ('literal' in slot) return slot.literal.length;
  const [value] = Object.values(slot) as unknown[];
  return typeof value === 'number' ? value : 1;
};

export const widthOfAll = (layout: Layout): number => layout.reduce((sum, slot) => sum + widthOf(slot), 0);

/** The units of a date that a layout writes, in its order. */
export const unitsOfLayout = (layout: Layout): DateUnit[] =>
  layout.flatMap((slot) => Object.keys(slot).filter(isDateUnit));

/** A slot of letters: a workshop's, or the same on all codes. */
export const ofLetters = (slot: Slot): boolean => 'plant' in slot || 'literal' in slot;

/** What of a code is a workshop's number, or its letter with a number: "2", "G2". None where it is letters alone. */
export function workshopDigits(layout: Layout, code: string): string | null {
  const signs = code.replace(/[^\p{L}\d]/gu, '');
  let at = 0;
  for (const slot of layout) {
    if ('plant' in slot) {
      const own = signs.slice(at, at + slot.plant);
      return /\d/.test(own) ? own : null;
    }
    at += widthOf(slot);
  }
  return null;
}

type Dated = readonly { code: string; reads: string }[];

/** The letters of the months where one is left out because it looks like a figure. Common practice, no source. */
const usualMonths = 'ABCDEFGHIJKL';
const withoutI = 'ABCDEFGHJKLM';
/** A layout with other letters for its months; the same where it writes none by letters. */
export const withMonths = (layout: Layout, letters: string): Layout =>
  layout.map((slot) => ('month' in slot && slot.month === 'letter' ? { month: 'letter', letters } : slot));
const hasMonthLetter = (layout: Layout): boolean =>
  layout.some((slot) => 'month' in slot && slot.month === 'letter' && slot.letters === undefined);

/** Whether every example of the page reads under a layout as it says, its months from A to L or without I; its own years settle those of two digits. */
export const readsExamples = (layout: Layout, examples: Dated): boolean =>
  readsAsTold(layout, examples) || (hasMonthLetter(layout) && readsAsTold(withMonths(layout, withoutI), examples));

/** A layout whose months are written by letters, with the letters that the page tells or that its examples ask for. */
export function withItsMonths(layout: Layout, examples: Dated, told: string | null): Layout {
  if (!hasMonthLetter(layout)) return layout;
  const own = told === null || told === usualMonths ? layout : withMonths(layout, told);
  if (readsAsTold(own, examples)) return own;
  return [layout, withMonths(layout, withoutI)].find((one) => readsAsTold(one, examples)) ?? own;
}

function readsAsTold(layout: Layout, examples: Dated): boolean {
  if (examples.length === 0) return true;
  const told = examples.map(({ code, reads }) => ({ code, reads }));
  const years = examples.map(({ reads }) => reads.slice(0, 4)).sort();
  const used: CodeSystem['used'] = [years[0]!, years.at(-1)!];
  const system: CodeSystem = { id: 'taken', used, layout, examples: told };
  // A workshop that is a number is read only where it is listed.
  const numbers = new Set(examples.flatMap(({ code }) => workshopDigits(layout, code) ?? []));
  const faults = testSystem(
    system,
    [...numbers].map((code) => ({ code, place: unknownPlace, used })),
  );
  return faults.layouts.length === 0 && faults.examples.length === 0;
}
