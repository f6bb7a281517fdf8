import type { Layout, Slot } from '../../../src/maker/types';
import { addDays, isoWeekSpan, isoWeeksInYear, type Span } from '../../../src/span';
import { pick, pickText } from '../../reference/number-systems';

/** A system of the draw: its layout, and how it writes a piece, worked out here once more without the decoder. */
export interface Truth {
  layout: Layout;
  from: number;
  to: number;
  plants: [code: string, place: string][];
  cycle: string | null;
  /** A running number that rises with the date, and nothing else. */
  running: boolean;
}

export interface Piece {
  code: string;
  /** What the code says of its date. */
  span: Span;
  place: string | null;
  letter: string | null;
  width: number;
}

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
/** Cycles as makers wrote them; the last two leave out letters in their own way. */
const cycles = [alphabet, 'ABCDEFGHJKLMNPRSTUVWXYZ', 'ABCDEFGHKLMNPRSTVWXY', 'ABDEFHIJKMPRSTWZ', 'BCDFGHJKLMNPRSTV'];
const months = ['ABCDEFGHIJKL', 'ABCDEFGHJKLM', 'ABCDEFGHKLMN'];
const places = ['BE', 'FR', 'ES', 'IT', 'PT', 'RO', 'DE', 'GB'];
const two = (number: number) => String(number).padStart(2, '0');

type Chance = () => number;
const whole = (chance: Chance, least: number, most: number) => least + Math.floor(chance() * (most - least + 1));

type Group = 'year' | 'month' | 'week' | 'day';
/** Two digits together, turned round, or apart with something between. */
function pair(chance: Chance, kind: Group): Slot[] {
  const dice = chance();
  const slot = (part: 2 | 'tens' | 'units', reversed = false) =>
    ({ [kind]: part, ...(reversed ? { reversed } : {}) }) as unknown as Slot;
  if (dice < 0.7) return [slot(2)];
  return dice < 0.8 ? [slot(2, true)] : [slot('tens'), slot('units')];
}

function dateUnits(chance: Chance): { units: Slot[][]; cycle: string | null; short: boolean } {
  const yearOf = () => (chance() < 0.15 ? [{ year: 4 } as Slot] : pair(chance, 'year'));
  const monthOf = (): Slot[] => {
    const dice = chance();
    if (dice < 0.6) return pair(chance, 'month');
    if (dice < 0.8) return [{ month: 'letter', letters: pick(chance, months) }];
    return [{ month: dice < 0.9 ? '1-9OND' : '1-9' }];
  };
  const dice = chance();
  if (dice < 0.2) {
    const cycle = pick(chance, cycles);
    const slot: Slot = { year: 'cycle', letters: cycle, first: 0, ...(chance() < 0.3 ? { enclosed: true } : {}) };
    const part = chance() < 0.4 ? [[{ quarter: 1 } as Slot]] : chance() < 0.6 ? [pair(chance, 'month')] : [];
    return { units: [[slot], ...part], cycle, short: false };
  }
  if (dice < 0.3) return { units: [[{ year: 1 }], monthOf()], cycle: null, short: true };
  if (dice < 0.65) return { units: [yearOf(), monthOf()], cycle: null, short: false };
  if (dice < 0.82) return { units: [yearOf(), pair(chance, 'week')], cycle: null, short: false };
  if (dice < 0.88) return { units: [yearOf(), [{ dayOfYear: 3 }]], cycle: null, short: false };
  if (dice < 0.94) return { units: [yearOf(), pair(chance, 'month'), pair(chance, 'day')], cycle: null, short: false };
  return { units: [yearOf()], cycle: null, short: false };
}

function shuffled<T>(chance: Chance, items: readonly T[]): T[] {
  const left = [...items];
  return items.map(() => left.splice(Math.floor(chance() * left.length), 1)[0]!);
}

/** A system drawn from the whole layout language, used from a year near the one given. */
export function drawSystem(chance: Chance, near: number): Truth {
  const from = near + whole(chance, 0, 4);
  if (chance() < 0.04) {
    return { layout: [{ serial: 7 }], from, to: from + whole(chance, 10, 20), plants: [], cycle: null, running: true };
  }
  const { units, cycle, short } = dateUnits(chance);
  const to = from + whole(chance, 7, short ? 9 : cycle ? Math.min(18, cycle.length - 1) : 18);
  const width = whole(chance, 1, 3);
  const plants = Array.from({ length: whole(chance, 2, 5) }, (): [string, string] => [
    pickText(chance, alphabet, width),
    pick(chance, places),
  ]);
  const others: Slot[][] = [];
  if (chance() < 0.6) others.push([{ plant: width }]);
  if (chance() < 0.4) others.push([{ serial: whole(chance, 2, 4) }]);
  if (chance() < 0.15) others.push([{ literal: pickText(chance, alphabet, whole(chance, 1, 2)) }]);
  if (chance() < 0.08) others.push([{ any: 1, of: 'letter' }]);
  const separated = chance() < 0.25 ? pick(chance, ['-', '/', ' ', '.']) : null;
  const ordered = apart(shuffled(chance, [...units, ...others]));
  const layout: Slot[] = ordered.flatMap((slot, at) =>
    at > 0 && separated !== null && chance() < 0.5 ? [{ separator: separated } as Slot, slot] : [slot],
  );
  const dice = chance();
  if (dice < 0.15) layout.push({ serial: { min: 2, max: 5 } });
  else if (dice < 0.22) layout.push({ check: 'luhn' });
  const fixed = layout.map((slot) => ('year' in slot && slot.year === 'cycle' ? { ...slot, first: from } : slot));
  return { layout: fixed, from, to, plants, cycle, running: false };
}

/** Where a pair is written apart, its units go behind what follows it: month and year interleaved, or a number between. */
function apart(units: readonly Slot[][]): Slot[] {
  const written: Slot[] = [];
  const waiting: Slot[] = [];
  for (const unit of units) {
    written.push(unit[0]!, ...waiting.splice(0));
    waiting.push(...unit.slice(1));
  }
  return [...written, ...waiting];
}

/** Luhn's digit (ISO/IEC 7812-1 Annex B; letters as two digits). */
function luhn(body: string): string {
  const digits = [...body].flatMap((sign) => [...String(Number.parseInt(sign, 36))].map(Number)).reverse();
  const sum = digits.reduce((all, digit, at) => all + (at % 2 ? digit : digit > 4 ? digit * 2 - 9 : digit * 2), 0);
  return String((10 - (sum % 10)) % 10);
}

/** A piece made on a day drawn from the system's years. */
export function drawPiece(truth: Truth, chance: Chance): Piece & { day: string } {
  const kinds = truth.layout.map((slot) => Object.keys(slot)[0]!);
  const year = whole(chance, truth.from, truth.to);
  const plain = truth.layout.some((slot) => 'month' in slot && slot.month === '1-9');
  const month = whole(chance, 1, plain ? 9 : 12);
  let day = `${year}-${two(month)}-${two(whole(chance, 1, 28))}`;
  const span: Span = { from: `${year}-01-01`, to: `${year}-12-31`, precision: 'year' };
  const week = whole(chance, 1, isoWeeksInYear(year));
  if (kinds.includes('week')) {
    Object.assign(span, isoWeekSpan(year, week));
    day = addDays(span.from!, whole(chance, 0, 6));
  } else if (kinds.includes('day') || kinds.includes('dayOfYear'))
    Object.assign(span, { from: day, to: day, precision: 'day' });
  else if (kinds.includes('month')) Object.assign(span, monthOf(day));
  else if (kinds.includes('quarter')) {
    const first = Math.ceil(month / 3) * 3;
    Object.assign(span, {
      from: `${year}-${two(first - 2)}-01`,
      to: monthOf(`${year}-${two(first)}-01`).to,
      precision: 'quarter',
    });
  }
  const plant = pick(chance, truth.plants.length > 0 ? truth.plants : [['', '']]);
  const days = (Date.parse(day) - Date.parse(`${truth.from}-01-01`)) / 86_400_000;
  const ordinal = (Date.parse(day) - Date.parse(`${year}-01-01`)) / 86_400_000 + 1;
  let [code, width] = ['', 0];
  const digit = (number: number, part: unknown, turned?: boolean) => {
    const text = two(number);
    return part === 'tens' ? text[0]! : part === 'units' ? text[1]! : turned ? text[1]! + text[0]! : text;
  };
  const letter = truth.cycle ? truth.cycle[(year - truth.from) % truth.cycle.length]! : null;
  for (const slot of truth.layout) {
    if ('literal' in slot) code += slot.literal;
    else if ('plant' in slot) code += plant[0];
    else if ('separator' in slot) code += slot.separator;
    else if ('any' in slot) code += pickText(chance, alphabet, 1);
    else if ('check' in slot) code += luhn(code.replace(/[^A-Z0-9]/g, ''));
    else if ('quarter' in slot) code += Math.ceil(month / 3);
    else if ('dayOfYear' in slot) code += String(ordinal).padStart(3, '0');
    else if ('day' in slot) code += digit(Number(day.slice(8)), slot.day, slot.reversed);
    else if ('week' in slot) code += digit(week, slot.week, slot.reversed);
    else if ('serial' in slot) {
      width = typeof slot.serial === 'number' ? slot.serial : whole(chance, slot.serial.min, slot.serial.max);
      if (truth.running) code += String(1_000_000 + Math.floor(days * 137 + chance() * 137));
      else
        code +=
          (typeof slot.serial === 'number' ? '' : pick(chance, '123456789')) +
          pickText(chance, '0123456789', typeof slot.serial === 'number' ? width : width - 1);
    } else if ('year' in slot) {
      if (slot.year === 'cycle') code += slot.enclosed ? `(${letter})` : letter;
      else if (slot.year === 4) code += year;
      else if (slot.year === 1) code += year % 10;
      else code += digit(year % 100, slot.year, slot.reversed);
    } else if ('month' in slot) {
      if (slot.month === 'letter') code += slot.letters![month - 1];
      else if (slot.month === '1-9' || slot.month === '1-9OND') code += '123456789OND'[month - 1];
      else code += digit(month, slot.month, 'reversed' in slot && slot.reversed);
    }
  }
  const place = truth.layout.some((slot) => 'plant' in slot) ? plant[1] : null;
  return { code, span, place: place || null, letter, width, day };
}

const monthOf = (day: string) => {
  const last = addDays(
    `${day.slice(5, 7) === '12' ? Number(day.slice(0, 4)) + 1 : day.slice(0, 4)}-${two((Number(day.slice(5, 7)) % 12) + 1)}-01`,
    -1,
  );
  return { from: `${day.slice(0, 7)}-01`, to: last, precision: 'month' as const };
};
