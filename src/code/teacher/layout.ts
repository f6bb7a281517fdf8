import type { Layout, Slot } from '../../maker/types';
import type { Frame, FramedFact } from './frame';

/** Characters before the core: what the part of changing length takes where it stands first. */
export const shiftOf = ({ changing }: Frame, fact: FramedFact): number => (changing === 'head' ? fact.rest.length : 0);

/** Slots in order, with the separators that stand between them and the part of changing length. */
export function layoutOf(frame: Frame, slots: { place: number; slot: Slot }[]): Layout {
  const marks = new Map<number, { characters: Set<string>; count: number }>();
  for (const fact of frame.facts) {
    for (const [at, character] of fact.marks) {
      const place = at - shiftOf(frame, fact);
      const known = marks.get(place) ?? { characters: new Set(), count: 0 };
      known.characters.add(character);
      known.count++;
      marks.set(place, known);
    }
  }
  const ordered = slots.flatMap((one) => splitAt(one, [...marks.keys()])).sort((a, b) => a.place - b.place);
  const layout: Layout = [];
  for (const { place, slot } of ordered) {
    const mark = marks.get(place);
    if (mark) {
      const optional = mark.count < frame.facts.length;
      layout.push({ separator: [...mark.characters].join(''), ...(optional ? { optional } : {}) });
    }
    layout.push(slot);
  }
  if (frame.changing === 'nothing') return layout;
  const beside = frame.changing === 'tail' ? layout.at(-1) : layout[0];
  const fixed = beside && 'serial' in beside && typeof beside.serial === 'number' ? beside.serial : 0;
  const { min, max } = frame.rest;
  const serial: Slot = { serial: { min: Math.max(1, fixed + min), max: fixed + max } };
  if (frame.changing === 'tail') return [...(fixed > 0 ? layout.slice(0, -1) : layout), serial];
  return [serial, ...(fixed > 0 ? layout.slice(1) : layout)];
}

interface Placed {
  place: number;
  slot: Slot;
}

/** A slot of several places in which separators stand becomes one for each side of them, where it can. */
function splitAt({ place, slot }: Placed, marks: readonly number[]): Placed[] {
  const [kind, value] = Object.entries(slot)[0] as [string, unknown];
  const turned = 'reversed' in slot && slot.reversed === true;
  const inside = (width: number) => marks.filter((mark) => mark > place && mark < place + width).sort((a, b) => a - b);
  if (value === 2 && ['year', 'month', 'week', 'day'].includes(kind) && inside(2).length > 0) {
    const { reversed: _, ...rest } = slot as { reversed?: boolean } & Slot;
    const half = (part: 'tens' | 'units') => ({ ...rest, [kind]: part }) as Slot;
    const [first, second] = turned ? (['units', 'tens'] as const) : (['tens', 'units'] as const);
    return [
      { place, slot: half(first) },
      { place: place + 1, slot: half(second) },
    ];
  }
  const width = kind === 'literal' ? String(value).length : Number(value);
  if (!['serial', 'any', 'literal'].includes(kind) || 'table' in slot || inside(width).length === 0)
    return [{ place, slot }];
  const borders = [place, ...inside(width), place + width];
  return borders.slice(1).map((end, at) => {
    const from = borders[at]!;
    const part = kind === 'literal' ? String(value).slice(from - place, end - place) : end - from;
    return { place: from, slot: { ...slot, [kind]: part } as Slot };
  });
}
