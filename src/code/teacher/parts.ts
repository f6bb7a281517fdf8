import type { Slot } from '../../maker/types';
import { allowedOf, dayNumber, type YearPart } from './facts';
import type { Frame, FramedFact } from './frame';
import type { LayoutSays } from './says';
import { isDigit, isLetter, pairCost, pairSlots, placesWith, type Writing } from './years';

/** How codes write a part of the year, and which years and numbers each code may mean by it. */
export interface PartWriting extends Writing {
  /** Years in which the code's number (of `core`, when not its own) gives a date that the fact allows; empty when none. */
  yearsFor(fact: FramedFact, core?: string): readonly number[];
  /** How many of the numbers of a year the fact allows. */
  choices(fact: FramedFact): number;
}

/** Lists by which one character writes a month, plainest first. */
const monthLists: { letters: string; slot: Slot; cost: number }[] = [
  { letters: '123456789', slot: { month: '1-9' }, cost: 2 },
  { letters: '123456789OND', slot: { month: '1-9OND' }, cost: 3 },
  { letters: 'ABCDEFGHIJKL', slot: { month: 'letter' }, cost: 2 },
  { letters: 'ABCDEFGHJKLM', slot: { month: 'letter', letters: 'ABCDEFGHJKLM' }, cost: 4 },
  { letters: 'ABCDEFGHKLMN', slot: { month: 'letter', letters: 'ABCDEFGHKLMN' }, cost: 5 },
];
const quarterLists: { letters: string; slot: Slot; cost: number }[] = [
  { letters: '1234', slot: { quarter: 1 }, cost: 2 },
  { letters: 'ABCD', slot: { quarter: 'ABCD' }, cost: 3 },
];

const none: readonly number[] = [];

const numbered = (frame: Frame, writing: Writing, part: YearPart, numberOf: (core: string) => number): PartWriting => ({
  ...writing,
  cost: writing.cost + Math.log2(frame.length + 1) * 0.5,
  yearsFor: (fact, core = fact.core) => allowedOf(fact, part).years.get(numberOf(core)) ?? none,
  choices: (fact) => allowedOf(fact, part).choices,
});

/** Every way in which the codes can write month, week, quarter or day of the year; and "not at all". */
export function partWritings(frame: Frame, least: number): PartWriting[] {
  const digits = placesWith(frame, least, isDigit);
  const letters = placesWith(frame, least, isLetter);
  const writings: PartWriting[] = [];
  const pairs: { kind: 'month' | 'week'; part: YearPart; extra: number }[] = [
    { kind: 'month', part: 'month', extra: 0 },
    { kind: 'week', part: 'week', extra: 1 },
    { kind: 'week', part: 'sunday-week', extra: 6 },
  ];
  for (const { kind, part, extra } of pairs) {
    for (const tens of digits) {
      for (const units of digits) {
        if (tens === units) continue;
        const slots = pairSlots(kind, tens, units).map(({ place, slot }) => ({
          place,
          slot: part === 'sunday-week' ? ({ ...slot, count: 'first-full-sunday' } as Slot) : slot,
        }));
        const cost = pairCost(tens, units, frame.length) + extra;
        const says: LayoutSays[] = [{ kind: 'two-digits', of: kind, places: [tens + 1, units + 1] }];
        const numberOf = (core: string) => Number(`${core[tens]}${core[units]}`);
        writings.push(numbered(frame, { places: [tens, units], slots, cost, says }, part, numberOf));
      }
    }
  }
  const lists = [
    ...monthLists.map((list) => ({ ...list, name: 'month' as const })),
    ...quarterLists.map((list) => ({ ...list, name: 'quarter' as const })),
  ];
  for (const { letters: list, slot, cost, name } of lists) {
    const places = new Set(
      [...list].every(isDigit) ? digits : [...list].every(isLetter) ? letters : [...digits, ...letters],
    );
    const mixed = ![...list].every(isDigit) && ![...list].every(isLetter);
    for (const place of mixed ? Array.from({ length: frame.length }, (_, at) => at) : places) {
      const says: LayoutSays[] = [{ kind: 'one-of', of: name, characters: list, place: place + 1 }];
      const numberOf = (core: string) => list.indexOf(core[place]!) + 1;
      writings.push(numbered(frame, { places: [place], slots: [{ place, slot }], cost, says }, name, numberOf));
    }
  }
  writings.push(...ordinalWritings(frame, digits));
  const fits = (writing: PartWriting) =>
    frame.facts.filter((fact) => fact.stated.spans.length === 0 || writing.yearsFor(fact).length > 0).length >= least;
  const fitting = writings.filter(fits);
  const withDays = writings
    .filter(({ slots }) => slots.some(({ slot }) => 'month' in slot))
    .flatMap((month) => dayWritings(frame, digits, month, least));
  return [yearAlone, ...fitting, ...withDays].filter(fits);
}

/** The code tells no more than the year. */
const yearAlone: PartWriting = {
  places: [],
  slots: [],
  cost: 0,
  says: [],
  yearsFor: (fact) => fact.years,
  choices: () => 1,
};

function ordinalWritings(frame: Frame, digits: number[]): PartWriting[] {
  return digits.flatMap((place) => {
    const places = [place, place + 1, place + 2];
    if (!places.every((one) => digits.includes(one))) return [];
    return [false, true].map((reversed) => {
      const order = reversed ? [...places].reverse() : places;
      const slot: Slot = reversed ? { dayOfYear: 3, reversed: true } : { dayOfYear: 3 };
      const says: LayoutSays[] = [{ kind: 'day-of-year', place: place + 1, reversed }];
      const writing = { places, slots: [{ place, slot }], cost: reversed ? 6 : 2, says };
      return numbered(frame, writing, 'dayOfYear', (core) => Number(order.map((at) => core[at]).join('')));
    });
  });
}

/** A month with a day of the month beside it, for codes whose known dates are days. */
function dayWritings(frame: Frame, digits: number[], month: PartWriting, least: number): PartWriting[] {
  if (!frame.facts.some(({ stated }) => stated.spans.some(({ precision }) => precision === 'day'))) return [];
  const free = digits.filter((place) => !month.places.includes(place));
  const [first] = month.slots;
  const numberOfMonth = (core: string): number => {
    const slot = first!.slot;
    if ('month' in slot && (slot.month === 2 || slot.month === 'tens' || slot.month === 'units')) {
      return Number(month.places.map((place) => core[place]).join(''));
    }
    const list = monthLists.find((known) => known.slot === slot)!.letters;
    return list.indexOf(core[month.places[0]!]!) + 1;
  };
  const inMonth = (fact: FramedFact) => allowedOf(fact, 'month').years.has(numberOfMonth(fact.core));
  if (frame.facts.filter(inMonth).length < least) return [];
  return free.flatMap((tens) =>
    free.flatMap((units) => {
      if (tens === units) return [];
      const dayOf = (core: string) => Number(`${core[tens]}${core[units]}`);
      return [
        {
          places: [...month.places, tens, units],
          slots: [...month.slots, ...pairSlots('day', tens, units)],
          cost: month.cost + pairCost(tens, units, frame.length),
          says: [
            ...month.says,
            { kind: 'two-digits' as const, of: 'day' as const, places: [tens + 1, units + 1] as const },
          ],
          yearsFor: (fact: FramedFact, core = fact.core) =>
            allowedOf(fact, 'day').years.get(dayNumber(numberOfMonth(core), dayOf(core))) ?? none,
          choices: (fact: FramedFact) => allowedOf(fact, 'day').choices,
        },
      ];
    }),
  );
}
