import type { MakerFile } from '../maker/types';
import { type Span, spanHolds } from '../span';
import { type Book, type BookSystem, openBook } from './book';
import { familyBook } from './families';
import type { LaidGroup, LaidLayout } from './layout';
import { leftOut, rightCheck, textOf } from './search';
import { kindOfGroup } from './slot';
import type { GroupName } from './slot/cell';
import type { Reading } from './types';
import { weekSpan } from './week';

/** What goes into a layout: a value for each group, and for each slot its own characters (null: left out). */
export interface Contents {
  values: Partial<Record<GroupName, string>>;
  /** By slot number, for slots without a group; check slots are computed. */
  texts: (string | null)[];
}

/** Fills a layout; null when the contents do not fit its cells. Check characters are computed. */
export function fillLayout(laid: LaidLayout, { values, texts }: Contents): string | null {
  const path = Array.from({ length: laid.cells.length }, () => leftOut);
  for (const [index, { slot, first, end }] of laid.slots.entries()) {
    if ('check' in slot) continue;
    const grouped = laid.cells.slice(first, end).some(({ group }) => group !== null);
    const text = texts[index] ?? null;
    if (grouped) {
      for (let cell = first; cell < end; cell++) {
        const { group, place } = laid.cells[cell]!;
        if (group) path[cell] = values[group]?.[place] ?? leftOut;
      }
      // Brackets round a letter stand beside its cell.
      if (text && laid.cells[first]!.alone) [path[first], path[end - 1]] = [text[0]!, text[1]!];
    } else if (text !== null) {
      if (text.length > end - first) return null;
      for (const [step, character] of [...text].entries()) path[first + step] = character;
    }
  }
  for (const check of laid.checks) {
    const right = rightCheck(check, path.join(''), laid);
    if (right === null) return null;
    for (const [step, cell] of check.cells.entries()) path[cell] = right[step]!;
  }
  return path.join('');
}

/** Year and week that a span with a beginning lies in, counted as the layout counts. */
function weekOf(span: Span & { from: string }, count: string | undefined): { year: number; week: number } | null {
  const near = Number(span.from.slice(0, 4));
  for (const year of [near - 1, near, near + 1]) {
    for (let week = 1; week <= 53; week++) {
      const whole = weekSpan(year, week, count);
      if (whole && spanHolds(whole, span)) return { year, week };
    }
  }
  return null;
}

/** What a group writes for a date and plant; null when the reading does not say. */
function groupText(group: LaidGroup, laid: LaidLayout, reading: Reading): string | null {
  if (group.name === 'plant')
    return reading.plant?.code ?? reading.parts.find(({ slot }) => slot === 'plant')?.text ?? null;
  const from = reading.span?.from;
  if (!reading.span || !from) return null;
  const span = { ...reading.span, from };
  const counted = laid.groups.get('week');
  const week = counted ? weekOf(span, counted.writes.split(', ')[1]) : null;
  const year = week?.year ?? Number(from.slice(0, 4));
  const date = { span, year, week: week?.week ?? null };
  return kindOfGroup(group.name).write?.(date, group) ?? null;
}

/** Each slot's own text, from the reading's parts in order; null when the parts are not this layout's. */
function textsOf(laid: LaidLayout, reading: Reading, reversed: boolean): (string | null)[] | null {
  const parts = reversed
    ? reading.parts.map((part) => ({ ...part, text: [...part.text].reverse().join('') })).reverse()
    : reading.parts;
  let next = 0;
  const texts: (string | null)[] = [];
  for (const { name, first } of laid.slots) {
    const part = parts[next];
    if (part?.slot === name) next++;
    else if (!laid.cells[first]?.optional) return null;
    texts.push(part?.slot === name ? part.text : null);
  }
  return next === parts.length ? texts : null;
}

const bracketsOf = (text: string | null): string | null =>
  text === null || text.length === 1 ? null : text.length === 3 ? text[0]! + text[2]! : null;

function encodeUnder(system: BookSystem, reading: Reading): string | null {
  for (const laid of system.layouts) {
    const texts = textsOf(laid, reading, system.reversed);
    if (!texts) continue;
    const values: Contents['values'] = {};
    for (const group of laid.groups.values()) values[group.name] = groupText(group, laid, reading) ?? '';
    const own = laid.slots.map(({ first }, index) =>
      laid.cells[first]?.alone ? bracketsOf(texts[index] ?? null) : (texts[index] ?? null),
    );
    const path = fillLayout(laid, { values, texts: own });
    if (path === null) continue;
    const text = textOf(path);
    return system.reversed ? [...text].reverse().join('') : text;
  }
  return null;
}

/**
 * The code that says what a reading says, written anew from its date, plant and numbers under its own system; null
 * when the system is not on hand. Decoding it gives the reading back: the test of every system.
 * @internal
 */
export function encodeReading(reading: Reading, files: readonly MakerFile[]): string | null {
  const books: Book[] = [...files.map(openBook), familyBook];
  for (const { systems, maker } of books) {
    if (maker !== reading.system.maker) continue;
    const system = systems.find(({ id }) => id === reading.system.id);
    const code = system ? encodeUnder(system, reading) : null;
    if (code !== null) return code;
  }
  return null;
}
