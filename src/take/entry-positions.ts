import type { Layout, Slot } from '../maker/types';
import { foldWords } from '../text';
import type { Entry } from './entry';
import { type Context, sayerOf } from './propose';
import { isDateUnit, slotOf } from './said/layout';
import { unitsNamed } from './said/unit-words';
import type { Proposal } from './types';
import { tellingFinder } from './words';

const ordinals = tellingFinder('ordinal-1', 'ordinal-2', 'ordinal-3', 'ordinal-4');
const small = /(?:st|nd|rd|th|er|re|eme|ème|e|a|o|ª|º|°|ste|de)?\.?(?![\p{L}])/u;
const range = new RegExp(
  `(?<!\\d)(\\d{1,2})${small.source}\\s?(?:[-–—/~〜]|to|bis|à|al?|t/m|,|&|\\+|and|und|et|e|y|en)\\s?(\\d{1,2})(?!\\d)`,
  'u',
);
const single = new RegExp(
  `^(?:n[.º°]?\\s?|no\\.?\\s?|nr\\.?\\s?|#)?(?:\\p{L}{3,14}\\s)?(\\d{1,2})${small.source}`,
  'u',
);
const longestHead = 40;

/** The places of a code that a label names, from the first to the last: "1st letter", "digits 2–3", "4. und 5. Stelle". */
export function placesOf(head: string): [number, number] | null {
  const text = foldWords(head).text.trim();
  if (text.length > longestHead) return null;
  const two = range.exec(text);
  if (two) return [Number(two[1]), Number(two[2])];
  const one = single.exec(text);
  if (one) return [Number(one[1]), Number(one[1])];
  const named = ordinals(text).map(({ value }) => Number(value.slice('ordinal-'.length)));
  return named.length === 0 ? null : [named[0]!, named.at(-1)!];
}

/** What so many signs of a code write, by the one unit that a text names. */
export function slotIn(body: string, width: number): Slot | null {
  const [unit, ...more] = new Set(unitsNamed(foldWords(body).text).map(({ value }) => value));
  if (unit === undefined || more.length > 0) return null;
  if (unit === 'plant' || unit === 'serial') return { [unit]: width } as unknown as Slot;
  return isDateUnit(unit) ? slotOf(unit, width) : null;
}

/**
 * A code told place by place: "1st letter: workshop", "2nd and 3rd digit: month", "4–5: year". Null where an entry names no
 * place or no unit, or the places leave a gap.
 */
export function positionsOf(entries: readonly (Entry | null)[], context: Context): Proposal[] | null {
  const layout: Layout = [];
  let reached = 0;
  const told = entries.flatMap((entry) => entry ?? []);
  const ofSigns = told.filter(({ head }) => placesOf(head) !== null);
  if (ofSigns.length < 2 || ofSigns.length < told.length - 1) return null;
  for (const { head, body } of ofSigns) {
    const [first, last] = placesOf(head)!;
    const slot = slotIn(body, last - first + 1);
    if (first !== reached + 1 || last < first || !slot) return null;
    layout.push(slot);
    reached = last;
  }
  const kinds = layout.map((slot) => Object.keys(slot)[0]!);
  const isCode = kinds.includes('year') && new Set(kinds).size === kinds.length && reached >= 3;
  if (!isCode) return null;
  const text = ofSigns.map(({ whole }) => whole.text).join(' … ');
  const say = sayerOf({ ...ofSigns[0]!.whole, text }, text, context);
  return [say({ kind: 'code-system', layout, examples: [] })];
}
