import type { Layout, Slot } from '../../maker/types';
import { type Folded, foldWords, isNegated } from '../../text';
import type { Proposal } from '../types';
import { tellingFinder } from '../words';
import { blanked } from './blanked';
import { namesCarrier } from './carrier';
import type { SaidExample } from './example';
import { type DateUnit, isDateUnit, ofLetters, readsExamples, slotOf, unitsOfLayout, widthOfAll } from './layout';
import { unitOver, unitsToldOf, withLettersOf } from './layout-added';
import { readLayoutWords, type SaidLayout } from './layout-words';
import { readCounts } from './number';

const changes = tellingFinder(
  'order-reversed',
  'form-kept',
  'signs-dropped',
  'more-of',
  'put-before',
  'put-behind',
  'put-between',
  'unit-replaced',
);
const letterWords = tellingFinder('letters', 'plant');
const lettersOnly = tellingFinder('letters');
const dateSlot = (slot: Slot): boolean => Object.keys(slot).some(isDateUnit);

/** What a text says of a form by that of the one before: its order, what came or went. */
interface Reference {
  reversed: boolean;
  kept: boolean;
  dropped: boolean;
  ahead: boolean;
  behind: boolean;
  between: boolean;
  replaced: boolean;
}

function referenceIn(text: string): Reference | null {
  const folded = foldWords(text);
  const said = changes(folded).filter(({ foldedStart, foldedEnd }) => !isNegated(folded.text, foldedStart, foldedEnd));
  const says = (value: (typeof said)[number]['value']) => said.some((one) => one.value === value);
  const reference = {
    reversed: says('order-reversed'),
    kept: says('form-kept'),
    dropped: (says('signs-dropped') && lettersOnly(folded).length > 0) || deniesLetters(folded),
    ahead: says('put-before'),
    behind: says('put-behind'),
    between: says('put-between'),
    replaced: says('unit-replaced'),
  };
  return Object.values(reference).some(Boolean) || says('more-of') || says('put-between') ? reference : null;
}

/** "Avant 1970 il n'y avait pas de lettre": that codes had none. */
const deniesLetters = (folded: Folded): boolean =>
  lettersOnly(folded).some(({ foldedStart, foldedEnd }) => isNegated(folded.text, foldedStart, foldedEnd));

/** How many of a code's signs are no letters. */
const digitsOf = (layout: Layout): number => widthOfAll(layout.filter((slot) => !ofLetters(slot)));

/** A layout whose two units of a date change places, with its letters where they were or at the other end. */
function reversedOf(layout: Layout): Layout[] {
  const dates = layout.filter(dateSlot);
  if (dates.length !== 2) return [];
  const [first, second] = dates;
  const swapped = layout.map((slot) => (slot === first ? second! : slot === second ? first! : slot));
  return layout.some(ofLetters) ? [swapped, [...layout].reverse()] : [swapped];
}

/** "The weeks gave way to months": one unit where the other was. */
function withUnitReplaced(layout: Layout, old: DateUnit, unit: DateUnit): Layout[] {
  const slot = slotOf(unit, 2);
  return slot && layout.some((one) => old in one) ? [layout.map((one) => (old in one ? slot : one))] : [];
}

/** A layout with so many letters at the end that the text names. */
function withLetters(layout: Layout, count: number, { ahead, behind }: Reference): Layout[] {
  if (count === 0 || layout.some(ofLetters)) return [];
  const letters: Slot = { plant: count };
  return ahead ? [[letters, ...layout]] : behind ? [[...layout, letters]] : [];
}

/** Candidates that the reference leaves, each with one more unit before or behind where the text names one that is new. */
function candidatesOf(reference: Reference, text: string, code: string | undefined, known: SaidLayout): Layout[] {
  const folded = foldWords(text).text;
  const { named, added } = unitsToldOf(folded, known);
  const own = known.layout.filter((slot) => !('separator' in slot));
  const base = reference.dropped ? own.filter((slot) => !ofLetters(slot)) : own;
  const [unit, ...more] = added;
  // "Just the month and the year": all that it had and has.
  const isSame = added.length === 0 && named.join() === known.units.join();
  // "The order was reversed: now the year stands before the month": told as it is now.
  const isTurned = reference.reversed && added.length === 0 && named.join() === [...known.units].reverse().join();
  const bases = reference.reversed
    ? reversedOf(base).slice(0, isTurned || (named.length > 0 && !letterWords(text).length) ? 1 : 2)
    : [base];
  if (reference.replaced && unit !== undefined && named.length === 2 && code !== undefined)
    return withUnitReplaced(base, named.find((one) => one !== unit)!, unit);
  if (more.length > 0 || (named.length > 1 && !isSame && !isTurned)) return [];
  if (unit !== undefined)
    return bases.flatMap((layout) => {
      const slot = code === undefined ? slotOf(unit, 2) : unitOver(unit, code, layout);
      if (!slot) return [];
      // Where in the code it came is for the example to show.
      if (reference.between && code !== undefined)
        return layout.slice(1).map((_, at) => layout.toSpliced(at + 1, 0, slot));
      const ends = [...(reference.behind ? [] : [[slot, ...layout]]), ...(reference.ahead ? [] : [[...layout, slot]])];
      return code === undefined && ends.length > 1 ? [] : ends;
    });
  const count = readCounts(folded).find(({ of }) => of === 'letters')?.count ?? 0;
  const lettered = letterWords(text).length > 0 && !reference.dropped;
  const longer = lettered
    ? bases.flatMap((one) => (code === undefined ? withLetters(one, count, reference) : withLettersOf(code, one)))
    : [];
  const isOnlyLonger = code === undefined && longer.length > 0;
  const same = reference.reversed || reference.dropped || reference.kept ? bases : [];
  return [...(isOnlyLonger ? [] : same), ...longer];
}

/**
 * A form told by the one before: "the order was reversed", "as above with a letter in front", "the month was added at the
 * end", "without the letter". Held against the examples, if any; null where the words leave several, or none reads them.
 */
export function layoutReferred(
  text: string,
  examples: readonly SaidExample[],
  known: SaidLayout | null,
): SaidLayout | null {
  const reference = known && known.by === 'words' ? referenceIn(text) : null;
  // "No letter any more, only a sticker": what carries something else tells of another form.
  if (examples.length === 0 && namesCarrier(text) !== null) return null;
  if (!reference || !known || known.layout.some((slot) => 'serial' in slot)) return null;
  // "No letter any more, and six figures that run on": a count of others is of another form.
  const counted = readCounts(text).filter(({ of, count }) => of === 'digits' && count > digitsOf(known.layout));
  if (examples.length === 0 && counted.length > 0) return null;
  const all = candidatesOf(reference, text, examples[0]?.code, known);
  const distinct = [...new Map(all.map((layout) => [JSON.stringify(layout), layout])).values()];
  const [layout, ...more] = distinct.filter((one) => readsExamples(one, examples));
  if (!layout || more.length > 0) return null;
  return { layout, fits: true, by: 'words', units: unitsOfLayout(layout), referred: true };
}

/** The form by the words that describe it, else by those that say what it is to the one told earlier. */
export function layoutTold(
  text: string,
  examples: readonly SaidExample[],
  earlier: SaidLayout | null,
  known: readonly DateUnit[] = [],
): SaidLayout | null {
  const own = readLayoutWords(text, examples, known);
  if (own?.by === 'words' && own.fits && (examples.length > 0 || own.units.length > 0)) return own;
  return layoutReferred(blanked(text, examples), examples, earlier) ?? own;
}

/** The form of a code that proposals told last and without a doubt. */
export function formTold(found: readonly Proposal[]): SaidLayout | null {
  const last = found.findLast((one) => one.kind === 'code-system' && one.doubts.length === 0);
  if (last?.kind !== 'code-system') return null;
  return { layout: last.layout, fits: true, by: 'words', units: unitsOfLayout(last.layout) };
}
