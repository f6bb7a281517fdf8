import type { Slot } from '../../maker/types';
import type { Frame } from './frame';
import { inferCycle } from './letters';
import type { LayoutSays } from './says';

/** Characters of a code that write one thing: where they stand, and the slots that say so. */
export interface Writing {
  places: number[];
  /** One slot for each group of neighbouring places. */
  slots: { place: number; slot: Slot }[];
  /** What this choice costs in bits: the more choices there were, the more. */
  cost: number;
  says: LayoutSays[];
}

export interface YearWriting extends Writing {
  /** Whether the code can mean this year. */
  means(core: string, year: number): boolean;
  /** Years after which the same characters mean the next year. */
  every: number;
  /** Ways in which it was made to fit, beyond its places: they all count as tried. */
  tried: number;
}

export const isDigit = (character: string) => /[0-9]/.test(character);
export const isLetter = (character: string) => /[A-Z]/.test(character);

/** Places in which at least `least` codes have a digit (or a letter). */
export function placesWith(frame: Frame, least: number, test: (character: string) => boolean): number[] {
  return Array.from({ length: frame.length }, (_, place) => place).filter(
    (place) => frame.facts.filter(({ core }) => test(core[place]!)).length >= least,
  );
}

/** Two digits at any two places: together, turned round, or apart. */
export function pairSlots(kind: 'year' | 'month' | 'week' | 'day', tens: number, units: number): Writing['slots'] {
  const slot = (part: 2 | 'tens' | 'units', reversed = false) =>
    ({ [kind]: part, ...(reversed ? { reversed: true } : {}) }) as unknown as Slot;
  if (units === tens + 1) return [{ place: tens, slot: slot(2) }];
  if (units === tens - 1) return [{ place: units, slot: slot(2, true) }];
  return [
    { place: tens, slot: slot('tens') },
    { place: units, slot: slot('units') },
  ];
}

/** Bits of choosing two places: neighbours in order are the plain case, one place between them the next. */
export function pairCost(tens: number, units: number, length: number): number {
  if (units === tens + 1) return 2;
  if (units === tens + 2) return 3.5;
  return 3.5 + Math.log2(length * (length - 1));
}

/** Sets of letters that cycles use: all, and those that leave out letters easily mistaken. */
const cycleLetters = [
  'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
  'ABCDEFGHJKLMNPQRSTUVWXYZ',
  'ABCDEFGHJKLMNPRSTUVWXYZ',
  'ABCDEFGHJKLMNPRSTVWXYZ',
  'ABCDEFGHJKLMNPRSTVWXY',
  'ABCDEFGHKLMNPRSTVWXY',
  'ABCDEFGHKLMNOPQRSTUVWXYZ',
  'ABCDEFGHIJKLMNOPQRSTU',
];

function cycleWritings(frame: Frame, least: number): YearWriting[] {
  const places = placesWith(frame, least, isLetter);
  const dated = frame.facts.flatMap((fact) => (fact.loose ? [] : fact.years.map((year) => ({ fact, year }))));
  const earliest = Math.min(...dated.map(({ year }) => year));
  return places.flatMap((place) =>
    cycleLetters.flatMap((letters, choice) => {
      // The first year is told by any one code; those that are wrong or of another era are outvoted.
      const votes = new Map<number, Set<number>>();
      for (const { fact, year } of dated) {
        const at = letters.indexOf(fact.core[place]!);
        if (at < 0) continue;
        const start = earliest - ((((earliest - (year - at)) % letters.length) + letters.length) % letters.length);
        votes.set(start, (votes.get(start) ?? new Set()).add(fact.index));
      }
      return [...votes]
        .filter(([, voters]) => voters.size >= least)
        .map(([first]) => cycleWriting(frame, place, letters, first, choice * 0.5));
    }),
  );
}

function cycleWriting(frame: Frame, place: number, letters: string, first: number, choiceCost: number): YearWriting {
  const enclosed = frame.facts.every((fact) => fact.enclosed === place);
  return {
    places: [place],
    slots: [{ place, slot: { year: 'cycle', letters, first, ...(enclosed ? { enclosed: true } : {}) } }],
    cost: 3 + Math.log2(frame.length + 1) + Math.log2(letters.length) + choiceCost,
    says: [{ kind: 'year-letter', first, place: place + 1, letters, skipped: null }],
    means: (core, year) => {
      const at = letters.indexOf(core[place]!);
      return at >= 0 && year >= first && (year - first - at) % letters.length === 0;
    },
    every: letters.length,
    tried: letters.length,
  };
}

/** Cycles that leave out letters of their own, for places where no usual set of letters fits. */
function ownCycleWritings(frame: Frame, usual: readonly YearWriting[], least: number): YearWriting[] {
  const places = placesWith(frame, least, isLetter);
  return places.flatMap((place) => {
    const inferred = inferCycle(frame.facts, place);
    // A usual set of letters that says the same is the plainer one.
    const isUsual = (one: YearWriting) =>
      one.places[0] === place && inferred?.known.every(([letter, year]) => one.means(letter.padStart(place + 1), year));
    if (!inferred || usual.some(isUsual)) return [];
    const writing = cycleWriting(frame, place, inferred.letters, inferred.first, inferred.cost);
    const { letters, first, skipped } = inferred;
    const says: LayoutSays[] = [{ kind: 'year-letter', first, place: place + 1, letters, skipped }];
    return [{ ...writing, says, tried: writing.tried * 2 ** inferred.cost }];
  });
}

/** Every way in which the codes can write their year. */
export function yearWritings(frame: Frame, least: number): YearWriting[] {
  const digits = placesWith(frame, least, isDigit);
  const number = (core: string, places: number[]) => Number(places.map((place) => core[place]).join(''));
  const writings: YearWriting[] = [];
  for (const tens of digits) {
    for (const units of digits) {
      if (tens === units) continue;
      writings.push({
        places: [tens, units],
        slots: pairSlots('year', tens, units),
        cost: pairCost(tens, units, frame.length),
        says: [{ kind: 'two-digits', of: 'year', places: [tens + 1, units + 1] }],
        means: (core, year) => number(core, [tens, units]) === year % 100,
        every: 100,
        tried: 1,
      });
    }
  }
  for (const place of digits) {
    writings.push({
      places: [place],
      slots: [{ place, slot: { year: 1 } }],
      cost: 2 + Math.log2(frame.length),
      says: [{ kind: 'year-digit', place: place + 1 }],
      means: (core, year) => number(core, [place]) === year % 10,
      every: 10,
      tried: 1,
    });
    const four = [place, place + 1, place + 2, place + 3];
    if (!four.every((one) => digits.includes(one))) continue;
    for (const reversed of [false, true]) {
      const order = reversed ? [...four].reverse() : four;
      writings.push({
        places: four,
        slots: [{ place, slot: reversed ? { year: 4, reversed: true } : { year: 4 } }],
        cost: (reversed ? 6 : 2) + Math.log2(frame.length),
        says: [{ kind: 'four-digits', place: place + 1, reversed }],
        means: (core, year) => number(core, order) === year,
        every: 10_000,
        tried: 1,
      });
    }
  }
  const cycles = cycleWritings(frame, least);
  return [...writings, ...cycles, ...ownCycleWritings(frame, cycles, least)];
}
