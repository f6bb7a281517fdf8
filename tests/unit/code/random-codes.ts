import * as fc from 'fast-check';
import type { Book, BookSystem } from '../../../src/code/book';
import { fillLayout } from '../../../src/code/encode';
import { interpret } from '../../../src/code/interpret';
import type { LaidLayout } from '../../../src/code/layout';
import { textOf } from '../../../src/code/search';

const charactersOf = (laid: LaidLayout, first: number, end: number) =>
  fc.tuple(...laid.cells.slice(first, end).map(({ tight }) => fc.constantFrom(...tight)));

function slotText(laid: LaidLayout, index: number): fc.Arbitrary<string | null> {
  const { slot, first, end } = laid.slots[index]!;
  if ('check' in slot) return fc.constant(null);
  if ('year' in slot) return fc.constantFrom(null, ...(end - first === 3 ? ['()', '[]'] : []));
  if (laid.cells[first]?.group) return fc.constant(null);
  const whole = charactersOf(laid, first, end).map((characters) => characters.join(''));
  if (typeof slot === 'object' && 'serial' in slot) {
    const fewest = laid.cells.slice(first, end).filter(({ optional }) => !optional).length;
    return fc.tuple(whole, fc.integer({ min: fewest, max: end - first })).map(([text, width]) => text.slice(0, width));
  }
  return laid.cells[first]?.optional ? fc.option(whole) : whole;
}

/** Codes that a layout can write, sound or not: impossible days and numbers in gaps are among them. */
function layoutCodes(system: BookSystem, laid: LaidLayout): fc.Arbitrary<string | null> {
  const groups = [...laid.groups.values()].map((group) => {
    const cells = group.cells.map((cell) => fc.constantFrom(...laid.cells[cell]!.wide));
    const value = group.values ? fc.constantFrom(...group.values) : fc.tuple(...cells).map((all) => all.join(''));
    return value.map((text) => [group.name, text] as const);
  });
  const texts = fc.tuple(...laid.slots.map((_, index) => slotText(laid, index)));
  return fc.tuple(fc.tuple(...groups), texts).map(([values, own]) => {
    const path = fillLayout(laid, { values: Object.fromEntries(values), texts: own });
    if (path === null || !Array.isArray(interpret(system, laid, path))) return null;
    const text = textOf(path);
    return system.reversed ? [...text].reverse().join('') : text;
  });
}

/** Sound codes of a book, each with the id of the system that it was written under. */
export const soundCodes = (book: Book): fc.Arbitrary<{ id: string; code: string }> =>
  fc
    .oneof(
      ...book.systems.flatMap((system) =>
        system.layouts.map((laid) => layoutCodes(system, laid).map((code) => ({ id: system.id, code }))),
      ),
    )
    .filter((made): made is { id: string; code: string } => made.code !== null);
