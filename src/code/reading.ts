import { unknownPlace } from '../place';
import type { BookSystem } from './book';
import type { Meaning } from './interpret';
import { groupValue, slotText } from './interpret';
import type { LaidLayout } from './layout';
import { textOf } from './search';
import type { GroupName } from './slot/cell';
import type { PartTells, ReadingReason } from './tells';
import type { Reading, SystemName } from './types';

/** The plant with its place; null when no plant is named, or its place is not known. */
const placedIn = ({ plant }: Meaning) => (plant && plant.place !== unknownPlace ? plant : null);

/** What the whole of a group says. */
function groupTells(laid: LaidLayout, name: GroupName, path: string, meaning: Meaning): PartTells {
  const value = groupValue(laid, name, path)!;
  const group = laid.groups.get(name)!;
  switch (name) {
    case 'year':
      return { kind: 'year', year: meaning.year! };
    case 'plant':
      return { kind: 'plant', place: placedIn(meaning)?.place ?? null };
    case 'month':
      return { kind: 'month', month: group.width === 2 ? Number(value) : group.values!.indexOf(value) + 1 };
    case 'quarter':
      return { kind: 'quarter', number: group.values!.indexOf(value) + 1 };
    case 'week':
    case 'day':
      return { kind: name, number: Number(value) };
    case 'dayOfYear':
      return { kind: 'day-of-year', number: Number(value) };
  }
}

function slotTells(laid: LaidLayout, slot: number, path: string, meaning: Meaning): PartTells {
  const { slot: rule, first, end } = laid.slots[slot]!;
  const group = laid.cells.slice(first, end).find((cell) => cell.group)?.group;
  if (group) return groupTells(laid, group, path, meaning);
  const text = slotText(laid, slot, path);
  if ('serial' in rule) return { kind: 'serial', number: Number(rule.reversed ? [...text].reverse().join('') : text) };
  if ('check' in rule) return { kind: 'check' };
  return { kind: 'any' in rule ? 'any' : 'fixed' };
}

/** Why a code reads so. */
function reasonsOf(system: BookSystem, laid: LaidLayout, path: string, meaning: Meaning): ReadingReason[] {
  const reasons: ReadingReason[] = [];
  for (const { name } of laid.groups.values()) {
    const value = groupValue(laid, name, path)!;
    reasons.push({ kind: 'part', value, tells: groupTells(laid, name, path, meaning) });
  }
  const { used } = system;
  if (laid.groups.has('year') && laid.groups.get('year')!.width < 4 && meaning.inPeriod)
    reasons.push({ kind: 'century', used });
  if (laid.checks.length > 0) reasons.push({ kind: 'check-agrees' });
  if (laid.slots.some(({ slot }) => 'serial' in slot && slot.table)) reasons.push({ kind: 'in-table' });
  if (meaning.inFuture) reasons.push({ kind: 'in-future' });
  else if (!meaning.inPeriod) reasons.push({ kind: 'system-not-in-use', used });
  if (!meaning.plantInUse) reasons.push({ kind: 'plant-not-in-use', used: meaning.plant!.used });
  return reasons;
}

/** The name of the rule book that a reading follows, with the source that its file gives. */
const systemName = (system: BookSystem): SystemName => ({
  ...shortName(system),
  ...(system.source ? { source: system.source } : {}),
});

/** The same without its source, for what only fails to fit. */
export const shortName = ({ maker, id, invented, soft }: BookSystem): SystemName => ({
  maker,
  id,
  ...(invented ? { invented: true } : {}),
  ...(soft ? { soft: true } : {}),
});

/** A reading of a filled layout, its probability still to be given. */
export function readingOf(system: BookSystem, laid: LaidLayout, path: string, meaning: Meaning): Reading {
  const parts = laid.slots.flatMap(({ name }, slot) => {
    const text = slotText(laid, slot, path);
    if (text === '') return [];
    const start = textOf(path.slice(0, laid.slots[slot]!.first)).length;
    return [{ slot: name, text, start, end: start + text.length, tells: slotTells(laid, slot, path, meaning) }];
  });
  const text = textOf(path);
  const turned = system.reversed
    ? parts
        .map((part) => ({
          ...part,
          text: [...part.text].reverse().join(''),
          start: text.length - part.end,
          end: text.length - part.start,
        }))
        .reverse()
    : parts;
  return {
    text: system.reversed ? [...text].reverse().join('') : text,
    probability: 0,
    system: systemName(system),
    parts: turned,
    span: meaning.span,
    places: placedIn(meaning) ? [meaning.plant!.place] : [],
    plant: placedIn(meaning),
    systemUsed: system.used,
    ...(system.excepted.length > 0 ? { systemExcepted: system.excepted } : {}),
    reasons: reasonsOf(system, laid, path, meaning),
  };
}
