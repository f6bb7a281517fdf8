import type { Layout, Slot } from '../../maker/types';
import { foldWords } from '../../text';
import { tellingFinder } from '../words';
import { asFolded } from './as-folded';
import { blanked } from './blanked';
import { confirmedLayout } from './confirmed';
import type { SaidExample } from './example';
import {
  blank,
  type DateUnit,
  digitSlots,
  ofLetters,
  readsExamples,
  shapeOf,
  unitsOfLayout,
  widthOfAll,
} from './layout';
import { fill, onlyUsual, type Shape } from './layout-shapes';
import { lettersWithMonth, monthLetter } from './letter-slots';
import { readCounts, type SaidCount } from './number';
import { toldParts } from './told-parts';
import { unitsNamed, unitWords } from './unit-words';

const mixed = tellingFinder('interleaved');
const ordinals = tellingFinder('ordinal-1', 'ordinal-2', 'ordinal-3', 'ordinal-4');
const partWords = tellingFinder('ordinal-1', 'last-ones');

const added = tellingFinder('put-before', 'put-behind');

export interface SaidLayout {
  layout: Layout;
  /** Whether the examples read under it as they say. */
  fits: boolean;
  /** Whether the words tell it, or the examples alone. */
  by: 'words' | 'examples';
  units: DateUnit[];
  /** Whether it was told by the form before. */
  referred?: true;
}

/** Date units in the order in which a text names them, each once. */
function unitsOf(folded: string): { units: DateUnit[]; serial: boolean; plant: boolean } {
  const named = [...new Set(unitsNamed(folded).map(({ value }) => value))];
  const units = named.filter((unit): unit is DateUnit => unit !== 'plant' && unit !== 'serial');
  return { units, serial: named.includes('serial'), plant: named.includes('plant') };
}

/** "The first and third digits are the month, the second and fourth the year": which unit the odd places write. */
function alternating(folded: string, units: readonly DateUnit[]): [DateUnit, DateUnit] | null {
  if (units.length === 2 && mixed(asFolded(folded)).length > 0) return [units[0]!, units[1]!];
  const hits = ordinals(asFolded(folded));
  const order = hits.map(({ value }) => Number(value.slice(8)));
  const at = order.findIndex((one, index) => one === 1 && order[index + 1] === 3);
  if (at < 0 || units.length !== 2) return null;
  const behind = unitsOf(folded.slice(hits[at + 1]!.foldedEnd)).units[0];
  const other = units.find((unit) => unit !== behind);
  return behind && other ? [behind, other] : null;
}

/** Letters between the word that makes a count one of a part and what is counted: "the first two digits". */
const nearest = 12;

/** The counts of a whole code, without those of its parts: "four digits, the first two digits are the month". */
function wholeCounts(folded: string, counts: readonly SaidCount[]): readonly SaidCount[] {
  const hits = partWords(asFolded(folded));
  const whole = counts.filter(
    ({ start }) => !hits.some(({ foldedEnd }) => foldedEnd <= start && start - foldedEnd <= nearest),
  );
  return whole.some(({ of }) => of === 'digits') ? whole : counts;
}

const places = tellingFinder('plant', 'made-at');
const ofPlants = (text: string): boolean => places(text).length > 0;

/** What the letters of a code are: a fixed mark where the text writes them, else a plant's. */
const lettersSlot = (text: string, runs: readonly string[]): Slot => {
  const [first = ''] = runs;
  const written: readonly string[] = text.match(/(?<![\p{L}\d])\p{Lu}{1,9}(?![\p{L}\d])/gu) ?? [];
  // "K in front, for Kendal": one of several letters, or one that is said to be of a place.
  const isOfPlace = written.some((other) => other !== first && other.length === first.length) || ofPlants(text);
  const fixed = runs.every((run) => run === first) && written.includes(first) && !isOfPlace;
  return fixed && first !== '' ? { literal: first } : { plant: first.length };
};

/**
 * A layout from the words that describe it, held against the examples beside them. `known` are the units of the
 * description before, for "then two letters stood before it". Null when neither words nor examples settle one.
 */
export function readLayoutWords(
  text: string,
  examples: readonly SaidExample[],
  known: readonly DateUnit[] = [],
): SaidLayout | null {
  // Examples are no description: without them, "week 24 of 1996" names no unit.
  const plain = blanked(text, examples);
  // "A letter for the year": no layout has such a letter.
  if (yearLetter.test(foldWords(plain).text)) return null;
  const whole = wholeLayout(plain, examples, known);
  if (whole?.by === 'words' && whole.fits && examples.length > 0) return whole;
  const parts = toldParts(plain);
  const told = parts && readsExamples(parts, examples) ? parts : confirmedBy(plain, examples, known);
  if (!told) return whole;
  return { layout: told, fits: true, by: 'words', units: unitsOfLayout(told) };
}

/** The units that the text names in the order that its examples show: it may tell the end of a code first. */
function confirmedBy(plain: string, examples: readonly SaidExample[], known: readonly DateUnit[]): Layout | null {
  if (examples.length === 0) return null;
  const folded = foldWords(plain).text;
  const { units, plant } = unitsOf(folded);
  const own = units.length >= 2 ? units : units.length === 0 ? known : [];
  return own.length < 2 || monthLetter(plain) !== null ? null : confirmedLayout(examples, own, plant);
}

const ends = tellingFinder('ordinal-1', 'last-ones');
const tellsLastFirst = (folded: string): boolean => {
  const order = ends(asFolded(folded)).map(({ value }) => value);
  return order[0] === 'last-ones' && order.includes('ordinal-1');
};

const yearLetter =
  /(?:letter|lettre|buchstaben?|lettera|letra) (?:for|pour|fur|per|para|voor|of|de|del|des|dell'|della|da|van) ?(?:the |l'|das |il |el |het |jahr)?(?:year|annee|jahr|anno|ano|jaar)(?!\p{L})/u;

/** The layout by what the text says of the code as a whole: how many signs, and which units in which order. */
function wholeLayout(plain: string, examples: readonly SaidExample[], known: readonly DateUnit[]): SaidLayout | null {
  const folded = foldWords(plain).text;
  const counts = wholeCounts(folded, readCounts(folded));
  const { units: named, serial } = unitsOf(folded);
  const digits = counts.filter(({ of }) => of === 'digits');
  // "The last two are the year, the first two the week": told against its order, it wants an example.
  if (examples.length === 0 && tellsLastFirst(folded)) return null;
  if (serial && named.length === 0)
    return digits.length === 1 ? { layout: [{ serial: digits[0]!.count }], fits: true, by: 'words', units: [] } : null;
  const month = named.includes('month') ? monthLetter(plain) : null;
  const inDigits = month === null ? named : named.filter((unit) => unit !== 'month');
  const onlyYear = inDigits.length === 1 && inDigits[0] === 'year' && counts.length === 1 && digits.length === 1;
  const isYear = onlyYear && (digits[0]!.count === 2 || digits[0]!.count === 4);
  // "The letter of the workshop and the year: V68 is 1968".
  const ofYears =
    examples.length > 0 &&
    examples.every(({ reads }) => reads.length === 4) &&
    inDigits.every((unit) => unit === 'year');
  const units = ofYears
    ? ['year' as const]
    : inDigits.length >= 2 || month !== null || isYear
      ? inDigits
      : inDigits.length === 0
        ? [...known]
        : [];
  const shapes = shapesFrom(plain, counts, examples, units).flatMap((shape) => withMonthLetter(shape, month));
  const odd = alternating(folded, units);
  for (const shape of shapes) {
    const layout = fill(shape, units, odd) ?? withPlantInDigits(shape, units, folded);
    if (layout && named.length === 0 && !readsExamples(layout, examples)) return fromExamples(shapes, examples);
    if (layout) return { layout, fits: readsExamples(layout, examples), by: 'words', units };
  }
  return counts.length > 0 || named.length > 0 ? fromExamples(shapes, examples) : null;
}

function fromExamples(shapes: readonly Shape[], examples: readonly SaidExample[]): SaidLayout | null {
  const only = onlyUsual(shapes, examples);
  return only && { ...only, fits: true, by: 'examples' };
}

/** One of the letters writes the month, where the text says so. */
function withMonthLetter(shape: Shape, month: number | null): Shape[] {
  if (month === null) return [shape];
  const at = shape.findIndex((part) => 'plant' in part);
  const part = shape[at];
  const slots = part && 'plant' in part ? lettersWithMonth(part.plant, month) : null;
  return slots ? [[...shape.slice(0, at), ...slots, ...shape.slice(at + 1)]] : [];
}

/** "Week, then year, then the number of the workshop", all in digits: what is over of the digits is the workshop's. */
function withPlantInDigits(shape: Shape, units: readonly DateUnit[], folded: string): Layout | null {
  const [run, ...more] = shape.filter((part) => 'digits' in part);
  if (!run || !('digits' in run) || more.length > 0) return null;
  // Letters may write a month: "a letter (the month) and two figures (the year), then the number of the workshop".
  const others = shape.filter((part) => part !== run);
  const inLetters = others.filter((part) => 'month' in part);
  if (others.length > inLetters.length || units.length + inLetters.length < 2) return null;
  const over = run.digits - 2 * units.length;
  const hits = unitWords(asFolded(folded));
  const plant = hits.findIndex(({ value }) => value === 'plant');
  if (over < 1 || over > 2 || plant < 0) return null;
  const ahead = new Set(
    hits.slice(0, plant).flatMap(({ value }) => (units.includes(value as DateUnit) ? [value] : [])),
  );
  const dates = digitSlots(units, 2 * units.length);
  const own = dates && [...dates.slice(0, ahead.size), { plant: over }, ...dates.slice(ahead.size)];
  return own && shape.flatMap((part) => ('digits' in part ? own : [part]));
}

const letterWords = tellingFinder('letters');
const listed = /(?<![\p{L}\d])(\p{Lu}{1,3})\s(?:for|für|pour|per|para|voor|[=(])/gu;
/** "Its own letters in front: WH for Whitby, SC for Scarborough": how many, by those that are listed. */
function lettersListed(text: string): Pick<SaidCount, 'of' | 'count'> | undefined {
  const lengths = new Set([...text.matchAll(listed)].map(([, code]) => code!.length));
  const [count, ...others] = lengths;
  return count !== undefined && others.length === 0 && letterWords(text).length > 0
    ? { of: 'letters', count }
    : undefined;
}

/** "Then a letter was put before it": the form told before, with so many letters at its head or end. */
export function withLettersAdded(text: string, known: SaidLayout | null): SaidLayout | null {
  const folded = foldWords(text);
  const counts = readCounts(folded);
  const [count = lettersListed(text), ...more] = counts.filter(({ of }) => of === 'letters');
  if (!known || !count || more.length > 0 || unitsOf(folded.text).units.length > 0) return null;
  // "The same four digits": a count of others is of another form.
  const digits = widthOfAll(known.layout);
  if (counts.some((one) => one.of === 'digits' && one.count !== digits)) return null;
  const [where] = added(folded);
  if (!where || known.layout.some((slot) => ofLetters(slot) || 'serial' in slot)) return null;
  const letters: Slot = { plant: count.count };
  const layout = where.value === 'put-before' ? [letters, ...known.layout] : [...known.layout, letters];
  return { ...known, layout };
}

/** How the code looks: by its examples where there are any, else by the counts in the order they are told. */
function shapesFrom(
  text: string,
  counts: readonly { of: 'digits' | 'letters'; count: number }[],
  examples: readonly SaidExample[],
  units: readonly DateUnit[],
): Shape[] {
  if (examples.length > 0) {
    const runs = examples.map(({ code }) => shapeOf(code));
    const [first] = runs;
    const alike = runs.every(
      (other) =>
        other.length === first!.length &&
        other.every(
          ({ letters, text: run }, at) => letters === first![at]!.letters && run.length === first![at]!.text.length,
        ),
    );
    if (!alike) return [];
    const parted = examples.some(({ code }) => /[ -]/.test(code));
    const shape = first!.map(({ letters, text: run }, at) =>
      letters
        ? lettersSlot(
            text,
            runs.map((other) => other[at]!.text),
          )
        : { digits: run.length },
    );
    return [shape.flatMap((part, at) => (at > 0 && parted ? [blank, part] : [part]))];
  }
  const written = counts.map(({ of, count }): Slot | { digits: number } =>
    of === 'letters' ? { plant: count } : { digits: count },
  );
  const figures = written.filter((part): part is { digits: number } => 'digits' in part);
  // "Month (two digits), year (two digits)": each unit tells its own.
  if (figures.length === units.length && units.length > 1) {
    const all = figures.reduce((sum, part) => sum + part.digits, 0);
    const letters = written.filter((part) => !('digits' in part));
    return [[...letters, { digits: all }]];
  }
  // "Four digits: the first two the month, the last two the year": the parts add up to the whole.
  const [whole, ...parts] = figures;
  const summed = parts.length > 0 && whole!.digits === parts.reduce((sum, part) => sum + part.digits, 0);
  return figures.length === 1 || summed ? [written.filter((part) => !('digits' in part) || part === whole)] : [];
}
