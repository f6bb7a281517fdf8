import type { Slot } from '../../maker/types';
import { numbersAllowed, yearsTouched } from './facts';
import type { Frame } from './frame';
import { inferCycle } from './letters';

/** Characters of a code that write one thing: where they stand, and the slots that say so. */
export interface Writing {
  places: number[];
  /** One slot for each group of neighbouring places. */
  slots: { place: number; slot: Slot }[];
  /** What this choice costs in bits: the more choices there were, the more. */
  cost: number;
  words: string;
}

export interface YearWriting extends Writing {
  /** Whether the code can mean this year. */
  means(core: string, year: number): boolean;
  /** Share of codes that would mean a given year by chance. */
  chance: number;
}

const isDigit = (character: string | undefined) => character !== undefined && character >= '0' && character <= '9';

/** Places in which every code but `wrong` has a digit (or a letter). */
export function placesWith(frame: Frame, wrong: number, test: (character: string) => boolean): number[] {
  return Array.from({ length: frame.length }, (_, place) => place).filter(
    (place) => frame.facts.filter(({ core }) => !test(core[place]!)).length <= wrong - frame.leftOut.length,
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
  return 3.5 + Math.log2(Math.max(2, length * (length - 1)));
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

function cycleWritings(frame: Frame, wrong: number): YearWriting[] {
  const places = placesWith(frame, wrong, (character) => character >= 'A' && character <= 'Z');
  const dated = frame.facts.flatMap((fact) => yearsTouched(fact).map((year) => ({ fact, year })));
  if (dated.length === 0) return [];
  const earliest = Math.min(...dated.map(({ year }) => year));
  return places.flatMap((place) =>
    cycleLetters.flatMap((letters, choice) => {
      // The first year is told by any one code; the wrong ones are outvoted.
      const votes = new Map<number, number>();
      for (const { fact, year } of dated) {
        const at = letters.indexOf(fact.core[place]!);
        if (at < 0) continue;
        const start = earliest - ((((earliest - (year - at)) % letters.length) + letters.length) % letters.length);
        votes.set(start, (votes.get(start) ?? 0) + 1);
      }
      return [...votes]
        .filter(([, count]) => count >= frame.facts.length + frame.leftOut.length - wrong)
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
    words: `year letter from ${first} in place ${place + 1}, letters ${letters}`,
    means: (core, year) => {
      const at = letters.indexOf(core[place]!);
      return at >= 0 && year >= first && (year - first - at) % letters.length === 0;
    },
    chance: 1 / 26,
  };
}

/** Cycles that leave out letters of their own, for places where no usual set of letters fits. */
function ownCycleWritings(frame: Frame, usual: readonly YearWriting[]): YearWriting[] {
  const places = placesWith(frame, 0, (character) => character >= 'A' && character <= 'Z');
  return places.flatMap((place) => {
    if (usual.some((writing) => writing.places[0] === place)) return [];
    const inferred = inferCycle(frame.facts, place);
    if (!inferred) return [];
    const writing = cycleWriting(frame, place, inferred.letters, inferred.first, inferred.cost);
    return [{ ...writing, words: `${writing.words}; ${inferred.skipped || 'none'} taken to be skipped` }];
  });
}

/** Every way in which the codes can write their year. */
export function yearWritings(frame: Frame, wrong: number): YearWriting[] {
  const digits = placesWith(frame, wrong, isDigit);
  const number = (core: string, places: number[]) => Number(places.map((place) => core[place]).join(''));
  const writings: YearWriting[] = [];
  for (const tens of digits) {
    for (const units of digits) {
      if (tens === units) continue;
      writings.push({
        places: [tens, units],
        slots: pairSlots('year', tens, units),
        cost: pairCost(tens, units, frame.length),
        words: `year of two digits in places ${tens + 1} and ${units + 1}`,
        means: (core, year) => number(core, [tens, units]) === year % 100,
        chance: 1 / 100,
      });
    }
  }
  for (const place of digits) {
    writings.push({
      places: [place],
      slots: [{ place, slot: { year: 1 } }],
      cost: 2 + Math.log2(frame.length),
      words: `year of one digit in place ${place + 1}`,
      means: (core, year) => number(core, [place]) === year % 10,
      chance: 1 / 10,
    });
    const four = [place, place + 1, place + 2, place + 3];
    if (!four.every((one) => digits.includes(one))) continue;
    for (const reversed of [false, true]) {
      const order = reversed ? [...four].reverse() : four;
      writings.push({
        places: four,
        slots: [{ place, slot: reversed ? { year: 4, reversed: true } : { year: 4 } }],
        cost: (reversed ? 6 : 2) + Math.log2(frame.length),
        words: `year of four digits from place ${place + 1}${reversed ? ', backwards' : ''}`,
        means: (core, year) => number(core, order) === year,
        chance: 1 / 2000,
      });
    }
  }
  const cycles = cycleWritings(frame, wrong);
  return [...writings, ...cycles, ...ownCycleWritings(frame, cycles)].filter((writing) => {
    const fitting = frame.facts.filter(
      (fact) => fact.stated.spans.length === 0 || yearsNear(fact).some((year) => writing.means(fact.core, year)),
    );
    return fitting.length >= frame.facts.length + frame.leftOut.length - wrong;
  });
}

/** Years that a code may write: those of its date, and the week year at a year's end. */
const yearsNear = (fact: Frame['facts'][number]) => [
  ...new Set([...yearsTouched(fact), ...numbersAllowed(fact, 'week').map(({ year }) => year)]),
];
