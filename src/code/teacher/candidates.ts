import type { CodeSystem, Layout, Period, Plant, Slot } from '../../maker/types';
import { testSystem } from '../system';
import { yearsTouched } from './facts';
import type { Frame, FramedFact } from './frame';
import { explainLeftover, plantEntry } from './leftover';
import { type PartWriting, partWritings } from './parts';
import { type YearWriting, yearWritings } from './years';

/** A layout that explains the known codes. */
export interface Candidate {
  layout: Layout;
  used: Period;
  plants: Plant[];
  /** Indexes of the examples that it explains, and of those that it takes to be wrong. */
  explains: number[];
  wrong: number[];
  /** Bits of agreement less bits of choice: higher is better. */
  score: number;
  /** How many layouts as simple as this one would be expected to explain as much by chance. */
  byChance: number;
  words: string[];
}

interface Dated {
  year: YearWriting;
  part: PartWriting;
  agrees: FramedFact[];
  bits: number;
  cost: number;
}

/** Pairs looked at; the survivors of six or more codes are far fewer. */
const mostWritings = 80;
const mostDated = 60;

/** Joins year and part writings that use different places and agree with all but `wrong` codes. */
function datedWritings(frame: Frame, wrong: number): Dated[] {
  const needed = frame.facts.length + frame.leftOut.length - wrong;
  const byCost = (a: { cost: number }, b: { cost: number }) => a.cost - b.cost;
  const years = yearWritings(frame, wrong).sort(byCost).slice(0, mostWritings);
  const parts = partWritings(frame, wrong)
    .sort(byCost)
    .slice(0, mostWritings * 2);
  const dated: Dated[] = [];
  for (const year of years) {
    for (const part of parts) {
      if (part.places.some((place) => year.places.includes(place))) continue;
      const agrees = frame.facts.filter(
        (fact) => fact.stated.spans.length === 0 || part.yearsFor(fact).some((one) => year.means(fact.core, one)),
      );
      if (agrees.length < needed) continue;
      const bits = agrees.reduce((sum, fact) => {
        if (fact.stated.spans.length === 0) return sum;
        const years = Math.max(1, yearsTouched(fact).length);
        return sum - Math.log2(Math.min(1, year.chance * years)) - Math.log2(part.chance(fact));
      }, 0);
      dated.push({ year, part, agrees, bits, cost: year.cost + part.cost });
    }
  }
  return dated.sort((a, b) => b.bits - b.cost - (a.bits - a.cost)).slice(0, mostDated);
}

/** Bits that a wrong example costs: which one it is, and that wrong ones are rare. */
const wrongCost = (examples: number) => Math.log2(examples + 1) + 6;

/** All layouts of a frame that explain all but `wrong` of its codes, each tested with the decoder itself. */
export function candidatesOf(frame: Frame, wrong: number): Candidate[] {
  const anyDated = frame.facts.some(({ stated }) => stated.spans.length > 0);
  const total = frame.facts.length + frame.leftOut.length;
  const made = anyDated ? datedWritings(frame, wrong).map((dated) => build(frame, dated, wrong)) : [];
  const found: Candidate[] = [];
  for (const candidate of made) {
    const tested = testCandidate(candidate, frame);
    if (tested.wrong.length > wrong) continue;
    const score = candidate.score - tested.wrong.length * wrongCost(total);
    found.push({ ...tested, score, byChance: 2 ** -Math.min(1000, Math.max(-1000, candidate.score)) });
  }
  return found;
}

function build(frame: Frame, { year, part, agrees, bits, cost }: Dated, wrong: number): Candidate {
  const agreeing: Frame = { ...frame, facts: agrees };
  const left = frame.facts.length + frame.leftOut.length - agrees.length;
  const leftover = explainLeftover(agreeing, [...year.places, ...part.places], Math.max(0, wrong - left));
  const placed = [...year.slots, ...part.slots].map(({ place, slot }) => ({ place, slot, width: 0 }));
  const layout = layoutOf(agreeing, [...placed, ...leftover.slots]);
  const used = periodOf(agrees, year);
  return {
    layout,
    used,
    plants: leftover.plants.map(({ code, place }) => plantEntry(code, place, used)),
    explains: [],
    wrong: [],
    score: bits - cost + leftover.gain - layout.length,
    byChance: 0,
    words: [year.words, ...(part.places.length > 0 ? [part.words] : []), ...leftover.words],
  };
}

/** The period from the first to the last known date; a cycle's begins no earlier than its first letter. */
function periodOf(facts: readonly FramedFact[], writing: YearWriting): Period {
  const years = facts.flatMap((fact) => {
    const touched = yearsTouched(fact);
    return touched.some((year) => writing.means(fact.core, year))
      ? touched.filter((year) => writing.means(fact.core, year))
      : touched;
  });
  return [String(Math.min(...years)).padStart(4, '0'), String(Math.max(...years)).padStart(4, '0')];
}

/** Slots in order, with the separators that stand between them and the part of changing length. */
export function layoutOf(frame: Frame, slots: { place: number; slot: Slot }[]): Layout {
  const ordered: { place: number; slot: Slot }[] = [...slots].sort((a, b) => a.place - b.place);
  const shift = (fact: FramedFact) => (frame.changing === 'head' ? fact.rest.length : 0);
  const marks = new Map<number, { characters: Set<string>; count: number }>();
  for (const fact of frame.facts) {
    for (const [at, character] of fact.marks) {
      const place = at - shift(fact);
      const known = marks.get(place) ?? { characters: new Set(), count: 0 };
      known.characters.add(character);
      known.count++;
      marks.set(place, known);
    }
  }
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

/** Lets the decoder itself judge: each example decodes as it says, or counts as wrong. */
export function testCandidate(candidate: Candidate, frame: Frame): Candidate {
  const examples = frame.facts.map(({ code, reads }) => ({ code, reads }));
  const system: CodeSystem = { id: 'learned', used: candidate.used, layout: candidate.layout, examples };
  const faults = testSystem(system, candidate.plants);
  const failing =
    faults.layouts.length > 0 ? examples.map((_, index) => index) : faults.examples.map(({ example }) => example);
  const wrong = [...failing.map((at) => frame.facts[at]!.index), ...frame.leftOut].sort((a, b) => a - b);
  const explains = frame.facts.map(({ index }) => index).filter((index) => !wrong.includes(index));
  return { ...candidate, explains, wrong };
}
