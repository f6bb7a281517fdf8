import type { Layout, Period, Plant, Slot } from '../../maker/types';
import { type Span, spansMeet } from '../../span';
import { type BookSystem, bookPlants, openSystem } from '../book';
import { readExactly } from '../exact';
import type { Stated } from '../reads';
import type { Reading } from '../types';
import type { Dated } from './dated';
import type { Frame, FramedFact } from './frame';
import { layoutOf } from './layout';
import { explainLeftover, plantEntry } from './leftover';
import type { LayoutSays } from './says';
import { untoldLetters } from './untold-letters';

/** A layout that explains known codes of one era. */
export interface Candidate {
  layout: Layout;
  used: Period;
  plants: Plant[];
  /** Indexes of the examples that it explains. */
  explains: number[];
  /** Letters of its cycle that it takes to be left out, or of a year, where the codes leave a choice; empty when they do not. */
  guessed: string;
  /** What each of its parts does. */
  says: LayoutSays[];
}

/** A candidate with what it is worth. */
export interface Built {
  candidate: Candidate;
  /** Bits of agreement of dates and places. */
  bits: number;
  /** Bits of agreement less bits of choice: higher is better. */
  score: number;
}

/** Builds a layout round a way to write the date, from the codes given, and lets the decoder itself judge it. */
export function build({ frame, year, part, bits, cost }: Dated, facts: readonly FramedFact[]): Built {
  const agreeing: Frame = { ...frame, facts: [...facts], rest: restOf(facts) };
  // One place that its plant contradicts may be a wrong example.
  const leftover = explainLeftover(agreeing, [...year.places, ...part.places], facts.length > 4 ? 1 : 0);
  const placed = [...year.slots, ...part.slots].map(({ place, slot }) => ({ place, slot, width: 0 }));
  const used = periodOf(facts, year);
  const layout = layoutOf(agreeing, [...placed, ...leftover.slots]).map((slot) => sinceFirst(slot, Number(used[0])));
  const plants = leftover.plants.map(({ code, place }) => plantEntry(code, place, used));
  const says = [...year.says, ...part.says, ...leftover.says];
  const candidate = { layout, used, plants, explains: [], guessed: '', says };
  const explained = facts.flatMap((fact) => {
    const reading = readAs(candidate, fact);
    return reading ? [{ fact, reading }] : [];
  });
  const agreed = explained.reduce((sum, { fact }) => sum + (bits[fact.order] ?? 0), 0);
  return {
    candidate: {
      ...candidate,
      explains: explained.map(({ fact }) => fact.index),
      guessed: untoldLetters(
        layout,
        explained.map(({ fact, reading }) => ({ reading, years: fact.years })),
      ),
    },
    bits: agreed + Math.max(0, leftover.gain),
    score: agreed - cost + leftover.gain - layout.length,
  };
}

/** A cycle's first year is told as the last one that is not after the first known code. */
function sinceFirst(slot: Slot, from: number): Slot {
  if (!('year' in slot) || slot.year !== 'cycle') return slot;
  const turns = Math.max(0, Math.floor((from - slot.first) / slot.letters.length));
  return { ...slot, first: slot.first + turns * slot.letters.length };
}

function restOf(facts: readonly FramedFact[]): Frame['rest'] {
  const widths = facts.map(({ rest }) => rest.length);
  return { min: Math.min(...widths), max: Math.max(...widths) };
}

/**
 * The period from the first to the last known date. Dates that are vague do not widen it where one of their years lies
 * in it already.
 */
function periodOf(facts: readonly FramedFact[], writing: Dated['year']): Period {
  const yearsOf = (fact: FramedFact) => {
    const meant = fact.years.filter((year) => writing.means(fact.core, year));
    return meant.length > 0 ? meant : fact.years;
  };
  const byYears = [...facts].map(yearsOf).sort((a, b) => a.length - b.length);
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const years of byYears) {
    if (years.some((year) => year >= first && year <= last)) continue;
    const away = (year: number) => (first > last ? 0 : Math.min(Math.abs(year - first), Math.abs(year - last)));
    const near = years.reduce<number | null>(
      (best, year) => (best === null || away(year) < away(best) ? year : best),
      null,
    );
    if (near !== null) [first, last] = [Math.min(first, near), Math.max(last, near)];
  }
  return [String(first).padStart(4, '0'), String(last).padStart(4, '0')];
}

const opened = new WeakMap<Candidate, BookSystem>();

/** The candidate as the decoder needs it. */
export function openCandidate(candidate: Candidate): BookSystem {
  const { layout, used, plants } = candidate;
  const known = opened.get(candidate) ?? openSystem({ id: 'learned', used, layout }, null, bookPlants(plants)).system;
  opened.set(candidate, known);
  return known;
}

/** What a candidate reads in a code within its period; none where it does not fit. */
export const readingsOf = (candidate: Candidate, code: string): Reading[] =>
  readExactly(openCandidate(candidate), code).exact.flatMap(({ reading, meaning }) =>
    meaning.inPeriod ? [reading] : [],
  );

/** Whether a reading and what is known can both be. The code may say less than is known ("1994" of May 1994), or more. */
export const isMet = ({ span, places }: { span: Span | null; places: string[] }, stated: Stated): boolean =>
  (stated.spans.length === 0 || (span !== null && stated.spans.some((one) => spansMeet(one, span)))) &&
  stated.places.every((place) => places.length === 0 || places.includes(place));

/** The reading by which a candidate explains a code; none where it does not. */
const readAs = (candidate: Candidate, { code, stated }: FramedFact): Reading | undefined =>
  readingsOf(candidate, code).find((reading) => isMet(reading, stated));
