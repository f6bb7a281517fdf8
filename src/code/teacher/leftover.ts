import type { Plant, Slot } from '../../maker/types';
import { unknownPlace } from '../../place';
import { type CheckRule, checkCharacters, checkShape } from '../check-character';
import type { Frame, FramedFact } from './frame';
import { shiftOf } from './layout';
import type { LayoutSays } from './says';

/** What the places that no date uses may mean. */
export interface Leftover {
  slots: { place: number; width: number; slot: Slot }[];
  plants: { code: string; place: string }[];
  /** Bits that the agreement of check characters and of plants with their places is worth, less its cost. */
  gain: number;
  says: LayoutSays[];
}

interface Run {
  from: number;
  to: number;
}

const isLetters = (text: string) => /^[A-Z]+$/.test(text);
const isDigits = (text: string) => /^[0-9]+$/.test(text);

/** Neighbouring places, parted where a separator stands between them in any code. */
function runsOf(free: readonly number[], parted: ReadonlySet<number>): Run[] {
  const runs: Run[] = [];
  for (const place of free) {
    const last = runs.at(-1);
    if (last && last.to === place && !parted.has(place)) last.to++;
    else runs.push({ from: place, to: place + 1 });
  }
  return runs;
}

/** Places of the core before which a separator stands in some code. */
const marksOf = (frame: Frame): Set<number> =>
  new Set(frame.facts.flatMap((fact) => [...fact.marks.keys()].map((at) => at - shiftOf(frame, fact))));

const textIn = (fact: FramedFact, { from, to }: Run) => fact.core.slice(from, to);

interface PlantRun extends Run {
  placeOf: Map<string, string>;
  against: number[];
  gain: number;
}

/** The plant codes of a run when each code stands for one place; null when too many facts speak against it. */
function plantRun(facts: readonly FramedFact[], run: Run, wrong: number): PlantRun | null {
  const votes = new Map<string, Map<string, number>>();
  for (const fact of facts) {
    if (!fact.place) continue;
    const places = votes.get(textIn(fact, run)) ?? new Map<string, number>();
    places.set(fact.place, (places.get(fact.place) ?? 0) + 1);
    votes.set(textIn(fact, run), places);
  }
  if (votes.size === 0) return null;
  // Where some plants have a place, those without one are listed too, or their codes would not be read.
  const unplaced = facts.map((fact): [string, string] => [textIn(fact, run), unknownPlace]);
  const named = new Map([...votes].map(([code, places]) => [code, [...places].sort((a, b) => b[1] - a[1])[0]![0]]));
  const placeOf = new Map([...unplaced, ...named]);
  const against = facts.flatMap((fact) => {
    const place = placeOf.get(textIn(fact, run));
    return fact.place && place !== fact.place ? [fact.index] : [];
  });
  const places = new Set(facts.flatMap(({ place }) => place ?? [])).size;
  const told = facts.filter(({ place }) => place).length - votes.size - against.length;
  if (against.length > wrong) return null;
  return { ...run, placeOf, against, gain: told * Math.log2(Math.max(1.2, places)) };
}

/** The run that best stands for the places: letters before digits, then what repeats with its place. */
function bestPlants(facts: readonly FramedFact[], runs: readonly Run[], wrong: number): PlantRun | null {
  let best: (PlantRun & { score: number }) | null = null;
  for (const run of runs) {
    for (let from = run.from; from < run.to; from++) {
      for (let to = from + 1; to <= Math.min(run.to, from + 4); to++) {
        const part = { from, to };
        const texts = facts.map((fact) => textIn(fact, part));
        const lettered = texts.filter((text) => /[A-Z]/.test(text)).length >= texts.length - wrong;
        const wholeLetters = texts.filter(isLetters).length >= texts.length - wrong;
        const found = plantRun(facts, part, wrong);
        if (!found || (!lettered && new Set(texts).size > texts.length / 2)) continue;
        const whole = from === run.from && to === run.to ? 2 : 0;
        const score =
          found.gain + (lettered ? 4 : 0) + (wholeLetters ? to - from : 0) + whole - found.against.length * 6;
        if (!best || score > best.score) best = { ...found, score };
      }
    }
  }
  return best;
}

const checkRules: CheckRule[] = ['luhn', 'mod10', 'mod11', 'mod97', 'iso6346'];

/** A check at the end of the last free run that all but `wrong` codes obey. */
function checkAtEnd(frame: Frame, runs: readonly Run[], wrong: number) {
  const last = runs.at(-1);
  if (!last || last.to !== frame.length || frame.changing === 'tail') return null;
  for (const rule of checkRules) {
    const { width } = checkShape[rule];
    const from = frame.length - width;
    if (from < last.from || from === 0) continue;
    const against = frame.facts.filter((fact) => {
      const body = [...fact.rest, ...fact.core.slice(0, from)];
      return checkCharacters(rule, body, body.length) !== fact.core.slice(from);
    });
    const right = frame.facts.length - against.length;
    // Three codes that agree by chance are one case in a thousand for one digit; fewer prove nothing.
    if (against.length <= wrong && right >= 3) {
      const gain = right * Math.log2(10) * width - 4 - against.length * 8;
      return { rule, width, from, against: against.map(({ index }) => index), gain };
    }
  }
  return null;
}

/** Explains the places that the date leaves: check characters, plants, fixed characters, serial numbers. */
export function explainLeftover(frame: Frame, used: readonly number[], wrong: number): Leftover {
  const free = Array.from({ length: frame.length }, (_, place) => place).filter((place) => !used.includes(place));
  const leftover: Leftover = { slots: [], plants: [], gain: 0, says: [] };
  const parted = marksOf(frame);
  let runs = runsOf(free, parted);
  const check = checkAtEnd(frame, runs, wrong);
  if (check) {
    leftover.slots.push({ place: check.from, width: check.width, slot: { check: check.rule } });
    leftover.gain += check.gain;
    leftover.says.push({ kind: 'check', rule: check.rule });
    runs = runsOf(
      free.filter((place) => place < check.from),
      parted,
    );
  }
  const plants = bestPlants(frame.facts, runs, wrong);
  if (plants) {
    leftover.slots.push({
      place: plants.from,
      width: plants.to - plants.from,
      slot: { plant: plants.to - plants.from },
    });
    leftover.plants.push(...[...plants.placeOf].map(([code, place]) => ({ code, place })));
    leftover.gain += plants.gain;
    leftover.says.push({ kind: 'plant', from: plants.from + 1, to: plants.to });
    runs = runsOf(
      free.filter((place) => (place < plants.from || place >= plants.to) && (!check || place < check.from)),
      parted,
    );
  }
  // A layout names one plant: the first letters that may be it.
  let plantWanted = !plants;
  for (const run of runs) {
    for (const part of partsOf(frame, run)) {
      const plain = plainSlot(frame, part, plantWanted, leftover);
      if ('plant' in plain.slot) plantWanted = false;
      leftover.slots.push(plain);
    }
  }
  return leftover;
}

/** Splits a run where letters end and digits begin in all codes. */
function partsOf(frame: Frame, run: Run): Run[] {
  const kindAt = (place: number) => {
    const texts = frame.facts.map(({ core }) => core[place]!);
    return texts.every(isDigits) ? 'digit' : texts.every(isLetters) ? 'letter' : 'either';
  };
  const parts: Run[] = [];
  for (let place = run.from; place < run.to; place++) {
    const last = parts.at(-1);
    if (last && kindAt(last.from) === kindAt(place)) last.to++;
    else parts.push({ from: place, to: place + 1 });
  }
  return parts;
}

function plainSlot(frame: Frame, run: Run, plantWanted: boolean, leftover: Leftover) {
  const texts = frame.facts.map((fact) => textIn(fact, run));
  const width = run.to - run.from;
  const at = { place: run.from, width };
  const same = new Set(texts).size === 1;
  if (same && texts.length >= 3) {
    leftover.gain += width;
    leftover.says.push({ kind: 'literal', text: texts[0]! });
    return { ...at, slot: { literal: texts[0]! } };
  }
  if (texts.every(isDigits)) {
    leftover.says.push({ kind: 'serial', digits: width });
    return { ...at, slot: { serial: width } };
  }
  if (texts.every(isLetters) && width <= 3 && plantWanted) {
    leftover.says.push({ kind: 'plant-letters' });
    return { ...at, slot: { plant: width } };
  }
  leftover.says.push({ kind: 'unexplained', characters: width });
  leftover.gain -= width * 2;
  return { ...at, slot: texts.every(isLetters) ? { any: width, of: 'letter' as const } : { any: width } };
}

/** A plant as a maker file lists it, worked at least while its known codes were made. */
export const plantEntry = (code: string, place: string, used: [string, string | null]): Plant => ({
  code,
  place,
  used,
  sources: ['learned from known codes'],
});
