import type { Frame, FramedFact } from './frame';
import { type PartWriting, partWritings } from './parts';
import { type YearWriting, yearWritings } from './years';

/** One way to write the date, with the codes that agree with it. */
export interface Dated {
  frame: Frame;
  year: YearWriting;
  part: PartWriting;
  /** By the code's place in order of time: bits that its agreement is worth; null where it does not agree. */
  bits: (number | null)[];
  cost: number;
}

/** What a search has done so far. */
export interface Work {
  /** Comparisons of one code with one way to write its date: what the search costs. */
  steps: number;
  /** Layouts that were tried, whether they fitted or not. */
  tried: number;
}

/** Writings that go on to be joined, the best of each kind; only codes of very many places have more. */
const mostYears = 250;
const mostParts = 400;

interface Weighed<W> {
  writing: W;
  /** By code of the frame: bits that agreement with its date is worth. */
  bits: number[];
}

/** Weight of a sign that was not seen yet, as if it had been seen so often (Krichevsky and Trofimov's estimate). */
const unseen = 0.5;

/**
 * Bits that a sign in each place is worth on the whole, told from the list itself: a place where every code has the
 * same digit tells next to nothing, one where they vary as much as a digit can. It is what the signs of a place cost to
 * write down one after another when each is expected as often as it came before.
 */
function signBits({ facts, length }: Frame): number[] {
  return Array.from({ length }, (_, place) => {
    const seen = new Map<string, number>();
    const signs = facts.map(({ core }) => core[place]!);
    const kinds = signs.every((sign) => sign <= '9') ? 10 : signs.every((sign) => sign > '9') ? 26 : 36;
    const bits = signs.reduce((sum, sign, before) => {
      const count = seen.get(sign) ?? 0;
      seen.set(sign, count + 1);
      return sum - Math.log2((count + unseen) / (before + kinds * unseen));
    }, 0);
    return bits / signs.length;
  });
}

/** Every pair of a year and a part of the year that uses different places and agrees with at least `least` codes. */
export function* datedWritings(frame: Frame, size: number, least: number, work: Work): Generator<Work, Dated[]> {
  const { facts } = frame;
  const allYears = yearWritings(frame, least);
  const allParts = partWritings(frame, least);
  const triedYears = allYears.reduce((sum, { tried }) => sum + tried, 0);
  const tries = partsTried(frame);
  work.tried += triedYears * tries;
  work.steps += facts.length * (allYears.length + tries);
  yield work;
  const byCost = (a: { cost: number }, b: { cost: number }) => a.cost - b.cost;
  const signs = signBits(frame);
  const worth = ({ places }: { places: number[] }) => places.reduce((sum, place) => sum + signs[place]!, 0);
  const years = allYears
    .filter((year) => facts.filter((fact) => isUndated(fact) || meansNear(year, fact)).length >= least)
    .sort(byCost)
    .slice(0, mostYears)
    .map((writing) => ({
      writing,
      bits: facts.map((fact) => worth(writing) - Math.log2(Math.max(1, Math.min(fact.years.length, writing.every)))),
    }));
  const parts: (Weighed<PartWriting> & { years: (readonly number[])[] })[] = [];
  for (const writing of allParts.sort(byCost).slice(0, mostParts)) {
    const bits = facts.map((fact) => worth(writing) - Math.log2(Math.max(1, writing.choices(fact))));
    parts.push({ writing, bits, years: facts.map((fact) => writing.yearsFor(fact)) });
    work.steps += facts.length;
    yield work;
  }
  const dated: Dated[] = [];
  for (const year of years) {
    for (const part of parts) {
      if (part.writing.places.some((place) => year.writing.places.includes(place))) continue;
      const bits: (number | null)[] = Array.from({ length: size }, () => null);
      let agreed = 0;
      for (const [at, fact] of facts.entries()) {
        if (!isUndated(fact) && !part.years[at]!.some((one) => year.writing.means(fact.core, one))) continue;
        bits[fact.order] = isUndated(fact) ? 0 : Math.max(0, year.bits[at]! + part.bits[at]!);
        agreed++;
      }
      if (agreed < least) continue;
      dated.push({ frame, year: year.writing, part: part.writing, bits, cost: year.writing.cost + part.writing.cost });
    }
    work.steps += parts.length * facts.length;
    yield work;
  }
  return dated;
}

/**
 * Whether the codes of some of the frame's places in time differ in length, where the frame is one of changing lengths:
 * those of one length have a plainer frame of their own.
 */
export function hasOwnFrame({ frame, bits }: Dated, isOf: (order: number) => boolean): boolean {
  if (frame.changing === 'nothing') return true;
  const widths = new Set(
    frame.facts.flatMap(({ order, rest }) => (bits[order] !== null && isOf(order) ? [rest.length] : [])),
  );
  return widths.size > 1;
}

const isUndated = (fact: FramedFact) => fact.stated.spans.length === 0;
/** A date at a year's end may be of the week year beside it. */
const meansNear = (year: YearWriting, fact: FramedFact) => {
  const [first, last] = [Math.min(...fact.years), Math.max(...fact.years)];
  return [first - 1, ...fact.years, last + 1].some((one) => year.means(fact.core, one));
};

/** Ways to write a part of the year that were looked at, whether they fitted or not. */
function partsTried({ length }: Frame): number {
  const pairs = length * (length - 1);
  return 1 + 3 * pairs + 7 * length + 2 * Math.max(0, length - 2);
}
