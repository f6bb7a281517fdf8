import { placeName, unknownPlace } from '../place';
import { spanWords } from '../span';
import type { BookSystem } from './book';
import type { Meaning } from './interpret';
import { groupValue, slotName, slotText } from './interpret';
import type { LaidLayout } from './layout';
import { textOf } from './search';
import type { GroupName } from './slot/cell';
import type { Reading, SystemName } from './types';

const monthNames = 'January February March April May June July August September October November December'.split(' ');

/** The plant with its place; null when no plant is named, or its place is not known. */
const placedIn = ({ plant }: Meaning) => (plant && plant.place !== unknownPlace ? plant : null);

/** What the whole of a group says, in plain words. */
function groupSays(laid: LaidLayout, name: GroupName, path: string, meaning: Meaning): string {
  const value = groupValue(laid, name, path)!;
  const group = laid.groups.get(name)!;
  switch (name) {
    case 'year':
      return String(meaning.year);
    case 'plant':
      return placedIn(meaning) ? placeName(meaning.plant!.place) : 'place not known';
    case 'month':
      return monthNames[(group.width === 2 ? Number(value) : group.values!.indexOf(value) + 1) - 1]!;
    case 'quarter':
      return `quarter ${group.values!.indexOf(value) + 1}`;
    case 'week':
      return `week ${Number(value)}`;
    case 'day':
      return `day ${Number(value)}`;
    case 'dayOfYear':
      return `day ${Number(value)} of the year`;
  }
}

function slotSays(laid: LaidLayout, slot: number, path: string, meaning: Meaning): string {
  const { slot: rule, first, end } = laid.slots[slot]!;
  const group = laid.cells.slice(first, end).find((cell) => cell.group)?.group;
  if (group) return groupSays(laid, group, path, meaning);
  const text = slotText(laid, slot, path);
  if ('serial' in rule) return `number ${Number(rule.reversed ? [...text].reverse().join('') : text)}`;
  if ('check' in rule) return 'agrees with the other characters';
  return 'any' in rule ? 'not explained' : 'always there';
}

/** Why a code reads so, in plain words for the screen. */
function reasonsOf(system: BookSystem, laid: LaidLayout, path: string, meaning: Meaning): string[] {
  const reasons: string[] = [];
  for (const group of laid.groups.values()) {
    const value = groupValue(laid, group.name, path)!;
    reasons.push(`${slotName(group.name)} "${value}": ${groupSays(laid, group.name, path, meaning)}`);
  }
  if (laid.groups.has('year') && laid.groups.get('year')!.width < 4 && meaning.inPeriod) {
    reasons.push(`the century or decade follows from the system's period: ${spanWords(system.used)}`);
  }
  if (laid.checks.length > 0) reasons.push('the check character agrees');
  if (laid.slots.some(({ slot }) => 'serial' in slot && slot.table))
    reasons.push('the number lies in a range of the table');
  if (meaning.inFuture) reasons.push('the date lies in the future');
  else if (!meaning.inPeriod) {
    reasons.push(`code's system not in use at its own date: it was used ${spanWords(system.used)}`);
  }
  if (!meaning.plantInUse) {
    reasons.push(`plant not in use at that date: it worked ${meaning.plant!.used.map(spanWords).join(' and ')}`);
  }
  return reasons;
}

/** The name of the rule book that a reading follows, with the source that its file gives. */
const systemName = (system: BookSystem): SystemName => ({
  ...shortName(system),
  ...(system.source ? { source: system.source } : {}),
});

/** The same without its source, for what only fails to fit. */
export const shortName = ({ maker, id, invented }: BookSystem): SystemName => ({
  maker,
  id,
  ...(invented ? { invented: true } : {}),
});

/** A reading of a filled layout, its probability still to be given. */
export function readingOf(system: BookSystem, laid: LaidLayout, path: string, meaning: Meaning): Reading {
  const parts = laid.slots.flatMap(({ name }, slot) => {
    const text = slotText(laid, slot, path);
    if (text === '') return [];
    const start = textOf(path.slice(0, laid.slots[slot]!.first)).length;
    return [{ slot: name, text, start, end: start + text.length, says: slotSays(laid, slot, path, meaning) }];
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
    reasons: reasonsOf(system, laid, path, meaning),
  };
}
