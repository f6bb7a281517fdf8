import type { Layout, Slot } from '../../maker/types';
import { foldWords } from '../../text';
import { tellingFinder } from '../words';
import type { SaidExample } from './example';
import { type DateUnit, isDateUnit, ofLetters, readsExamples, shapeOf, slotOf, widthOfAll } from './layout';
import type { SaidLayout } from './layout-words';
import { unitsNamed } from './unit-words';

const letters = tellingFinder('letters', 'plant');
const more = tellingFinder('more-of', 'put-before', 'put-behind', 'put-between');

/**
 * The form told before with letters more, or with the digits of one unit more, where examples show it and read so: "then it
 * begins with the letter of the works", "two more digits in front, the month". Null where no example does.
 */
export function withSignsAdded(
  text: string,
  examples: readonly SaidExample[],
  known: SaidLayout | null,
): SaidLayout | null {
  const [first] = examples;
  if (!first || !known) return null;
  const { added } = unitsToldOf(foldWords(text).text, known);
  const candidates: Layout[] = [];
  if (added.length === 0 && letters(text).length > 0) candidates.push(...withLettersOf(first.code, known.layout));
  const [unit, ...others] = added;
  if (unit !== undefined && others.length === 0 && more(text).length > 0)
    candidates.push(...withUnit(unit, first.code, known.layout));
  const [layout, ...further] = candidates.filter((one) => readsExamples(one, examples));
  const units: DateUnit[] = unit === undefined ? known.units : [...known.units, unit];
  return layout && further.length === 0 ? { layout, fits: true, by: 'words', units } : null;
}

/** The units of a date that a text names, and those of them that the form told before has not. */
export function unitsToldOf(folded: string, known: SaidLayout): { named: DateUnit[]; added: DateUnit[] } {
  const named = [...new Set(unitsNamed(folded).map(({ value }) => value))].filter(isDateUnit);
  return { named, added: named.filter((unit) => !known.units.includes(unit)) };
}

/** A layout with the letters that an example has before or behind it. */
export function withLettersOf(code: string, layout: Layout): Layout[] {
  if (layout.some(ofLetters)) return [];
  const [head, ...rest] = shapeOf(code);
  const tail = rest.at(-1);
  return [
    ...(head?.letters ? [[{ plant: head.text.length } as Slot, ...layout]] : []),
    ...(tail?.letters ? [[...layout, { plant: tail.text.length } as Slot]] : []),
  ];
}

/** A unit as long as what an example has over a layout; null where none is. */
export const unitOver = (unit: DateUnit, code: string, layout: Layout): Slot | null =>
  slotOf(unit, code.replace(/[^\p{L}\d]/gu, '').length - widthOfAll(layout));

/** A layout with one unit more before it, behind it, or between two of its parts. */
function withUnit(unit: DateUnit, code: string, layout: Layout): Layout[] {
  const slot = unitOver(unit, code, layout);
  return slot ? [...layout, null].map((_, at) => layout.toSpliced(at, 0, slot)) : [];
}

/** Examples of a code that is the year alone: "57 (1957)", "61 is 1961". */
export function yearsShown(layout: Layout, text: string): { code: string; reads: string }[] {
  const [only, ...others] = layout;
  if (!only || others.length > 0 || !('year' in only) || only.year !== 2) return [];
  return [...text.matchAll(/(?<!\d)(\d\d)(?!\d)[^\d.;]{1,20}((?:18|19|20)\1)(?!\d)/g)].map(([, code, reads]) => ({
    code: code!,
    reads: reads!,
  }));
}
