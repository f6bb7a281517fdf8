import type { Layout } from '../maker/types';
import type { CheckRule } from './check-character';
import type { LayoutFaultSays } from './fault';
import { shapeSlot } from './slot';
import type { Cell, GroupName, GroupShape, SlotContext } from './slot/cell';

/** Longest code that any layout can describe; longer ones fit nothing and cost nothing. */
export const longestCode = 64;

export interface LaidCell extends Cell {
  slot: number;
  /** The cell to go on with when this one and the rest of its slot are left out. */
  skipTo: number;
}

/** Cells of one value in the order in which they stand, and which characters may follow those already read. */
export interface LaidGroup extends GroupShape {
  cells: number[];
  /** Characters that may follow, by those of the group read so far; null when all may. */
  next: Map<string, string> | null;
}

export interface LaidCheck {
  cells: number[];
  rule: CheckRule;
  weights: readonly number[] | undefined;
  over: 'before' | 'all';
}

/** Slots that may be left out or change their length; each doubles the ways to read a code. */
export const mostOpenSlots = 8;

/** A layout made ready for reading. */
export interface LaidLayout {
  cells: LaidCell[];
  slots: { name: string; slot: Layout[number]; first: number; end: number }[];
  groups: Map<GroupName, LaidGroup>;
  checks: LaidCheck[];
  /** Fewest and most characters. */
  shortest: number;
  longest: number;
}

export interface LayoutFault {
  /** The slot at fault, null when it is the layout as a whole. */
  slot: number | null;
  fault: LayoutFaultSays;
}

/** Prepares a layout, or says what is wrong with it. */
export function layOut(layout: Layout, context: SlotContext): LaidLayout | LayoutFault {
  const laid: LaidLayout = { cells: [], slots: [], groups: new Map(), checks: [], shortest: 0, longest: 0 };
  for (const [index, slot] of layout.entries()) {
    const shape = shapeSlot(slot, context);
    const first = laid.cells.length;
    const end = first + shape.cells.length;
    laid.slots.push({ name: shape.name, slot, first, end });
    const fault = shape.group ? addToGroup(laid.groups, shape.group, shape.cells, first) : null;
    if (fault) return { slot: index, fault };
    for (const [step, cell] of shape.cells.entries()) {
      const skipTo = cell.alone ? first + step + 1 : end;
      laid.cells.push({ ...cell, slot: index, skipTo });
    }
    if ('serial' in slot && typeof slot.serial === 'object' && slot.serial.min > slot.serial.max) {
      return { slot: index, fault: { kind: 'serial-digits' } };
    }
  }
  if (laid.cells.length > longestCode) return { slot: null, fault: { kind: 'code-too-long', most: longestCode } };
  const open = new Set(laid.cells.flatMap(({ optional, slot }) => (optional ? [slot] : [])));
  if (open.size > mostOpenSlots) {
    return { slot: null, fault: { kind: 'too-open', most: mostOpenSlots } };
  }
  for (const group of laid.groups.values()) {
    const fault = finishGroup(group, laid.cells);
    if (fault) return { slot: null, fault };
  }
  addChecks(laid);
  laid.longest = laid.cells.length;
  for (let cell = 0; cell < laid.cells.length; ) {
    const here = laid.cells[cell]!;
    if (!here.optional) laid.shortest++;
    cell = here.optional ? here.skipTo : cell + 1;
  }
  return laid;
}

export const isFault = (laid: LaidLayout | LayoutFault): laid is LayoutFault => 'fault' in laid;

function addToGroup(
  groups: LaidLayout['groups'],
  shape: GroupShape,
  cells: Cell[],
  first: number,
): LayoutFaultSays | null {
  const known = groups.get(shape.name);
  const places = cells.flatMap((cell, step) => (cell.group ? [first + step] : []));
  if (!known) {
    groups.set(shape.name, { ...shape, cells: places, next: null });
    return null;
  }
  if (known.writes !== shape.writes) return { kind: 'two-ways', group: shape.name };
  known.cells.push(...places);
  return null;
}

/** Checks that the value's places are all there once, and makes the table of characters that may follow. */
function finishGroup(group: LaidGroup, cells: LaidCell[]): LayoutFaultSays | null {
  const places = group.cells.map((cell) => cells[cell]!.place);
  if (new Set(places).size !== places.length) return { kind: 'twice', group: group.name };
  if (places.length !== group.width) {
    if (group.name !== 'year' || places[0] !== 1) return { kind: 'half', group: group.name };
    // Units of a year without tens are a year of one digit.
    cells[group.cells[0]!]!.place = 0;
    group.width = 1;
  }
  if (!group.values) return null;
  const next = new Map<string, Set<string>>();
  for (const value of group.values) {
    const written = places.map((place) => value[place]!).join('');
    for (let length = 0; length < written.length; length++) {
      const before = written.slice(0, length);
      next.set(before, (next.get(before) ?? new Set()).add(written[length]!));
    }
  }
  group.next = new Map([...next].map(([before, after]) => [before, [...after].join('')]));
  return null;
}

function addChecks(laid: LaidLayout): void {
  for (const { slot, first, end } of laid.slots) {
    if (!('check' in slot)) continue;
    const over = slot.over ?? (slot.check === 'vin' ? 'all' : 'before');
    const cells = Array.from({ length: end - first }, (_, step) => first + step);
    laid.checks.push({ cells, rule: slot.check, weights: slot.weights, over });
  }
}
